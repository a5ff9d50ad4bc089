/** The app and the pages beside it, built into a folder that is thrown away and served as a plain host would. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Host, host } from '../support/host.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))

export const buildInto = (folder: string, config = 'vite.config.ts'): void => {
  const words = ['vite', 'build', '-c', config, '--outDir', folder, '--emptyOutDir', '--logLevel', 'error']
  execFileSync('npx', words, { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] })
}

export const benchSite = async (): Promise<Host> => {
  const folder = mkdtempSync(join(tmpdir(), 'smallhours-bench-'))
  buildInto(folder, 'test/bench/vite.config.ts')
  const { address, close } = await host((path) => readFileSync(join(folder, path)))
  return {
    address,
    close: () => {
      close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
