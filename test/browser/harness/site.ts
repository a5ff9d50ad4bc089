/** A static host whose files can be replaced by those of a newer build. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import { tmpdir } from 'node:os'
import { extname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const types: Record<string, string> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' }
const root = fileURLToPath(new URL('../../..', import.meta.url))

export type Site = {
  readonly address: string
  readonly publish: (edition: string) => void
  readonly close: () => void
}

/** The editions differ by a word on the page, and so in the names of their files. */
export const site = async (editions: readonly string[]): Promise<Site> => {
  const built = mkdtempSync(join(tmpdir(), 'smallhours-site-'))
  for (const edition of editions)
    execFileSync('npx', [
      ...['vite', 'build', '-c', join(root, 'test/browser/harness/vite.config.ts')],
      ...['--mode', edition, '--outDir', join(built, edition), '--logLevel', 'warn'],
    ])
  let published = editions[0] ?? ''
  const server: Server = createServer((asked, answer) => {
    const path = new URL(asked.url ?? '/', 'http://host').pathname
    const file = path.endsWith('/') ? `${path}index.html` : path
    try {
      const body = readFileSync(join(built, published, file.replace('/some/where', '')))
      answer.setHeader('content-type', types[extname(file)] ?? 'application/octet-stream')
      answer.end(body)
    } catch {
      answer.statusCode = 404
      answer.end()
    }
  })
  const port = await new Promise<number>((resolve, reject) => {
    server.listen(0, '127.0.0.1', () => {
      const at = server.address()
      if (at !== null && typeof at === 'object') resolve(at.port)
      else reject(new Error('The host has no port'))
    })
  })
  return {
    address: `http://127.0.0.1:${port}/some/where/`,
    publish: (edition) => {
      published = edition
    },
    close: () => {
      server.closeAllConnections()
      server.close()
      rmSync(built, { recursive: true, force: true })
    },
  }
}
