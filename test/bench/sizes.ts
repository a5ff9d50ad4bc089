/** What a build weighs on its way to a phone: compressed as a plain host compresses. */
import { readFileSync } from 'node:fs'
import { dirname, join, normalize } from 'node:path'
import { gzipSync } from 'node:zlib'

export type Sizes = {
  /** What Tonight's JavaScript comes to: the page's own scripts and all that they import at once. */
  readonly tonight: number
  /** Everything the worker keeps, and the worker. */
  readonly precache: number
  readonly scripts: readonly string[]
  readonly kept: readonly string[]
}

/** Names of scripts imported at once; those of `import()` stand in brackets and do not count. */
const staticImport = /(?:\bfrom|\bimport)\s*["'](\.{1,2}\/[^"']+\.js)["']/g
const pageScript = /<script[^>]+src="\.\/([^"]+)"/g
const keptAddress = /"url":\s*"([^"]+)"/g

const all = (text: string, pattern: RegExp): string[] => [...text.matchAll(pattern)].map(([, found = '']) => found)

export const sizesOf = (folder: string): Sizes => {
  const read = (file: string) => readFileSync(join(folder, file))
  const compressed = (files: Iterable<string>) => [...files].reduce((sum, file) => sum + gzipSync(read(file)).length, 0)
  const scripts = new Set(all(read('index.html').toString(), pageScript))
  // A set hands out what is added to it while it is walked.
  for (const script of scripts)
    for (const imported of all(read(script).toString(), staticImport))
      scripts.add(normalize(join(dirname(script), imported)))
  const kept = all(read('worker.js').toString(), keptAddress)
  return {
    tonight: compressed(scripts),
    precache: compressed([...new Set([...kept, 'worker.js'])]),
    scripts: [...scripts],
    kept,
  }
}
