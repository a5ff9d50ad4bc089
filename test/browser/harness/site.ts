/** A static host whose files can be replaced by those of a newer build. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Host, host } from '../../support/host.ts'

const root = fileURLToPath(new URL('../../..', import.meta.url))
/** Below the root, as the app may be. */
const below = '/some/where'

export type Site = Host & { readonly publish: (edition: string) => void }

/** The editions differ by a word on the page, and so in the names of their files. */
export const site = async (editions: readonly string[]): Promise<Site> => {
  const built = mkdtempSync(join(tmpdir(), 'smallhours-site-'))
  for (const edition of editions)
    execFileSync('npx', [
      ...['vite', 'build', '-c', join(root, 'test/browser/harness/vite.config.ts')],
      ...['--mode', edition, '--outDir', join(built, edition), '--logLevel', 'warn'],
    ])
  let published = editions[0] ?? ''
  const { address, close } = await host((path) => readFileSync(join(built, published, path.replace(below, ''))))
  return {
    address: new URL(`${below}/`, address).href,
    publish: (edition) => {
      published = edition
    },
    close: () => {
      close()
      rmSync(built, { recursive: true, force: true })
    },
  }
}
