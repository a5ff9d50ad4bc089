/** A plain static host on a port of its own. What stands at a path is read anew each time, so that it may be replaced. */
import { createServer } from 'node:http'
import { extname } from 'node:path'

const types: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
}

export type Host = { readonly address: string; readonly close: () => void }

/** @param read throws where nothing stands at that path */
export const host = async (read: (path: string) => Buffer | string): Promise<Host> => {
  const server = createServer((asked, answer) => {
    const { pathname } = new URL(asked.url ?? '/', 'http://host')
    const path = pathname.endsWith('/') ? `${pathname}index.html` : pathname
    try {
      const body = read(path)
      answer.setHeader('content-type', types[extname(path)] ?? 'application/octet-stream')
      answer.setHeader('cache-control', 'no-cache')
      answer.end(body)
    } catch {
      answer.statusCode = 404
      answer.end()
    }
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const at = server.address()
  if (at === null || typeof at === 'string') throw new Error('The host has no port')
  return {
    address: `http://127.0.0.1:${at.port}/`,
    close: () => {
      server.closeAllConnections()
      server.close()
    },
  }
}
