/** Before the tests: is there a Chromium? As root on Debian it is installed; elsewhere one line says what to do. */
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'

const known = JSON.parse(readFileSync(new URL('./chromiums.json', import.meta.url), 'utf8'))
const found = () => known.some((path) => existsSync(path))
const run = (command, ...words) =>
  spawnSync(command, words, { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } }).status ===
  0

if (!found() && process.getuid?.() === 0 && existsSync('/etc/debian_version')) {
  const install = () => run('apt-get', 'install', '-y', '-qq', '--no-install-recommends', 'chromium')
  run('apt-get', 'update', '-qq') && install()
}
if (!found()) {
  console.error(
    'The browser tests need Chromium: install the package "chromium" (Debian: apt-get install chromium) and run npm test again.',
  )
  process.exit(1)
}
