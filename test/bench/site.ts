/** The app and the pages beside it, built into a folder that is thrown away and served as a plain host would. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createServer } from 'node:http'
import { tmpdir } from 'node:os'
import { extname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))
const types: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
}

export type BenchSite = { readonly address: string; readonly close: () => void }

export const buildInto = (folder: string, config = 'vite.config.ts'): void => {
  const words = ['vite', 'build', '-c', config, '--outDir', folder, '--emptyOutDir', '--logLevel', 'error']
  execFileSync('npx', words, { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] })
}

export const benchSite = async (): Promise<BenchSite> => {
  const folder = mkdtempSync(join(tmpdir(), 'smallhours-bench-'))
  buildInto(folder, 'test/bench/vite.config.ts')
  const server = createServer((asked, answer) => {
    const { pathname } = new URL(asked.url ?? '/', 'http://host')
    const file = pathname.endsWith('/') ? `${pathname}index.html` : pathname
    try {
      const body = readFileSync(join(folder, file))
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
    address: `http://127.0.0.1:${port}/`,
    close: () => {
      server.closeAllConnections()
      server.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
