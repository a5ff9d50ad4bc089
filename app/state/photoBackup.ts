/** The book and its pictures in one file, and the pictures of such a file taken in. */
import {
  type Held,
  history,
  isUnread,
  ok,
  type PhotoId,
  type PhotoKept,
  type Result,
  refuse,
  wallDay,
} from '../../core/index.ts'
import type { FileUnreadable } from '../storage/backupRefusals.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import type { ImportStopped, Progress } from '../storage/importing.ts'
import type { Picture } from '../storage/photos.ts'
import { type BookWritten, writeBook } from './backup.ts'
import { phoneZone } from './phoneZone.ts'
import { allPictures, keepPicture, pictureOf } from './photos.ts'
import { pictureName } from './pictureName.ts'
import { currentWorld } from './store.ts'
import { type Inside, type Listed, mostZipped, unzip, zipOf } from './zip.ts'

const endings = { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp' } as const
const types = new Map(Object.entries(endings).map(([type, ending]) => [ending as string, type as PhotoKept['type']]))

/** The day first, so that they lie in order on a desk. */
const nameOf = ({ at, photo, type }: PhotoKept): string =>
  `photos/${wallDay(at, phoneZone())}-${photo}.${endings[type]}`
const named = (name: string): { readonly id: PhotoId; readonly type: PhotoKept['type'] } | undefined => {
  const [, id, ending = ''] = /([0-9a-f]{32})\.(\w+)$/.exec(name) ?? []
  const type = types.get(ending)
  return id !== undefined && type ? { id: id as PhotoId, type } : undefined
}

/** Twice what twenty years of a busy household come to. */
const roomForBook = 32 * 1024 * 1024

/** How many of the pictures the book tells of are on this phone. */
export const picturesOfBook = async (): Promise<
  Result<{ readonly told: number; readonly here: readonly PhotoKept[] }, StorageRefusal>
> => {
  const found = await allPictures()
  if (!found.ok) return found
  const there = new Set(found.value)
  const each = new Map(currentWorld().photos.map(({ fact }) => [fact.photo, fact]))
  const here = [...each.values()].filter(({ photo }) => there.has(photo))
  return ok({ told: each.size, here })
}

/** The book as a text and its pictures as plain files, in one zip: those that are on this phone. */
export const makeBackupWithPhotos = async (): Promise<Result<File, StorageRefusal>> => {
  const pictures = await picturesOfBook()
  if (!pictures.ok) return pictures
  const here = fitting(pictures.value.here)
  const book = await writeBook(() => here.length)
  if (!book.ok) return book
  const zip = await zipped(book.value, here)
  return zip.ok ? ok(new File([zip.value], `${book.value.name}.zip`, { type: zip.value.type })) : zip
}

const zipped = async (book: BookWritten, pictures: readonly PhotoKept[]): Promise<Result<Blob, StorageRefusal>> => {
  let refusal: StorageRefusal | undefined
  const inside = async function* (): AsyncIterable<Inside> {
    yield { name: `${book.name}.txt`, bytes: new TextEncoder().encode(book.text), squeeze: true }
    for (const fact of pictures) {
      const picture = await pictureOf(fact.photo)
      if (!picture.ok) refusal = picture.refusal
      else if (picture.value) yield { name: nameOf(fact), bytes: new Uint8Array(picture.value.bytes), squeeze: false }
    }
  }
  const zip = await zipOf(inside())
  return refusal ? refuse(refusal) : ok(zip)
}

/** As many as one file holds that can be taken in again, the newest first. */
export const fitting = (pictures: readonly PhotoKept[]): readonly PhotoKept[] => {
  let room = mostZipped - roomForBook
  return pictures
    .toSorted((a, b) => b.at - a.at)
    .filter(({ bytes }) => {
      room -= bytes
      return room >= 0
    })
}

export type PicturesInFile = {
  /** Pictures that the entries in the file tell of. */
  readonly told: number
  /** Of these, how many are in the file. */
  readonly inside: number
  /** In the file, told of once it is taken in, and not on this phone: by the names they have in the file. */
  readonly missing: readonly string[]
}

/**
 * Nothing is unpacked.
 * @param after what this phone's book will be: a photo crossed out here stays crossed out
 */
export const picturesInFile = async (
  entries: readonly Held[],
  after: readonly Held[],
  listed: readonly Listed[],
): Promise<PicturesInFile> => {
  const told = toldIn(entries)
  const files = listed.flatMap(({ name }) => {
    const it = named(name)
    return it ? [{ name, id: it.id }] : []
  })
  if (files.length === 0) return { told: told.size, inside: 0, missing: [] }
  // A disk that does not say has none of them; should it take none either, that is told when they come in.
  const found = await allPictures()
  const here = new Set(found.ok ? found.value : [])
  const wanted = toldIn(after)
  return {
    told: told.size,
    inside: files.filter(({ id }) => told.has(id)).length,
    missing: files.filter(({ id }) => wanted.has(id) && !here.has(id)).map(({ name }) => name),
  }
}

const toldIn = (entries: readonly Held[]): ReadonlySet<PhotoId> => {
  const { all, struck } = history(entries.flatMap((entry) => (isUnread(entry) ? [] : [entry])))
  return new Set(all.flatMap(({ id, fact }) => (fact.kind === 'photoKept' && !struck.has(id) ? [fact.photo] : [])))
}

export type PicturesTaken = {
  readonly kept: number
  /** Not what their names say: changed on the way. */
  readonly damaged: number
  /** Why the rest did not come in. */
  readonly stopped: StorageRefusal | FileUnreadable | ImportStopped | undefined
}

/** After the entries that tell of them. One that is not what its name says is left out. */
export const takePicturesIn = async (
  file: Blob,
  names: readonly string[],
  tell: (progress: Progress) => void,
  signal?: AbortSignal,
): Promise<PicturesTaken> => {
  let kept = 0
  let damaged = 0
  let bytes: Uint8Array
  try {
    bytes = new Uint8Array(await file.arrayBuffer())
  } catch {
    return { kept, damaged, stopped: { why: 'fileUnreadable' } }
  }
  for (const [done, name] of names.entries()) {
    if (signal?.aborted) return { kept, damaged, stopped: { why: 'importStopped' } }
    tell({ done, of: names.length })
    const it = named(name)
    const picture = it && asPicture(unzip(bytes, [name]).get(name), it.type)
    if (!it || !picture || (await pictureName(picture.bytes)) !== it.id) {
      damaged += 1
      continue
    }
    const written = await keepPicture(it.id, picture)
    if (!written.ok) return { kept, damaged, stopped: written.refusal }
    kept += 1
  }
  return { kept, damaged, stopped: undefined }
}

const asPicture = (bytes: Uint8Array | undefined, type: PhotoKept['type']): Picture | undefined =>
  bytes && { type, bytes: bytes.slice().buffer }
