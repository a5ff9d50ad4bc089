/**
 * Before the tests: is there a Chromium, and a message bus for the notifications it shows? As root on Debian they are
 * installed; elsewhere one line says what to do.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'

const known = JSON.parse(readFileSync(new URL('./chromiums.json', import.meta.url), 'utf8'))
const run = (command, ...words) =>
  spawnSync(command, words, { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } }).status ===
  0
const needed = [
  { name: 'chromium', found: () => known.some((path) => existsSync(path)) },
  { name: 'dbus', found: () => spawnSync('dbus-daemon', ['--version']).status === 0 },
]
const missing = () => needed.filter(({ found }) => !found()).map(({ name }) => name)

if (missing().length > 0 && process.getuid?.() === 0 && existsSync('/etc/debian_version'))
  run('apt-get', 'update', '-qq') && run('apt-get', 'install', '-y', '-qq', '--no-install-recommends', ...missing())
if (missing().length > 0) {
  const names = missing().join(' ')
  console.error(
    `The browser tests need what is missing here: ${names}. (Debian: apt-get install ${names}) Then run npm test again.`,
  )
  process.exit(1)
}
