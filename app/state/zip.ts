/** Files in one file, and out of it again: a plain zip, which any desk opens. */
import { unzipSync, Zip, ZipDeflate, ZipPassThrough } from 'fflate'
import { ok, type Result, refuse } from '../../core/index.ts'
import type { ZipBroken } from '../storage/backupRefusals.ts'

/** Over a thousand photos. A zip is held in memory while it is read. */
export const mostZipped = 512 * 1024 * 1024

export type Inside = {
  readonly name: string
  readonly bytes: Uint8Array
  /** Pictures are as small as they get. */
  readonly squeeze: boolean
}

/** One after the other, so that never more than one of them is held besides what is finished. */
export const zipOf = async (all: AsyncIterable<Inside>): Promise<Blob> => {
  const finished: BlobPart[] = []
  const zip = new Zip((error, chunk) => {
    if (error) throw error
    // A copy: what was handed in may be handed back.
    finished.push(new Blob([chunk as Uint8Array<ArrayBuffer>]))
  })
  for await (const { name, bytes, squeeze } of all) {
    const file = squeeze ? new ZipDeflate(name, { level: 6 }) : new ZipPassThrough(name)
    zip.add(file)
    file.push(bytes, true)
  }
  zip.end()
  return new Blob(finished, { type: 'application/zip' })
}

/** Whatever its name says: mail programs rename, and phones forget the ending. */
export const looksZipped = async (file: Blob): Promise<boolean> => {
  const [p, k, three, four] = new Uint8Array(await file.slice(0, 4).arrayBuffer())
  return p === 0x50 && k === 0x4b && three === 3 && four === 4
}

export type Listed = { readonly name: string; readonly size: number }

/** What is in it, nothing unpacked. Refuses what was cut short on its way. */
export const listZip = (bytes: Uint8Array): Result<readonly Listed[], ZipBroken> => {
  const listed: Listed[] = []
  try {
    unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        listed.push({ name, size: originalSize })
        return false
      },
    })
  } catch {
    return refuse({ why: 'zipBroken' })
  }
  return ok(listed)
}

/** Those of the names that unpack; one that does not is left out. */
export const unzip = (bytes: Uint8Array, names: readonly string[]): ReadonlyMap<string, Uint8Array> => {
  const found = new Map<string, Uint8Array>()
  for (const wanted of names)
    try {
      for (const [name, file] of Object.entries(unzipSync(bytes, { filter: ({ name }) => name === wanted })))
        found.set(name, file)
    } catch {
      // Broken in the middle: the others are whole.
    }
  return found
}
