/** Photos: the entry first, the picture second, so that a full phone costs the picture and never what was noted. */
import {
  type Entry,
  type Fact,
  keepPhoto,
  type Moment,
  ok,
  type PhotoId,
  type PhotoOf,
  type PhotoRefusal,
  picturesTold,
  type Result,
  type World,
} from '../../core/index.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { dropPictures, openPhotos, type Picture, picturesHere, putPicture, readPicture } from '../storage/photos.ts'
import { household } from './household.ts'
import { type NotAPicture, readyPicture } from './readyPicture.ts'
import { signal } from './signal.ts'
import { currentWorld, readAll, request } from './store.ts'
import { onMessage, tellTabs } from './tabs.ts'

const photos = openPhotos(household.photos)
const changed = signal()
/** Told when a picture has come or gone, in whichever tab. */
export const onPictures = changed.subscribe
onMessage(({ type }) => {
  if (type === 'picturesChanged') changed.tell()
})
const tell = () => {
  changed.tell()
  tellTabs({ type: 'picturesChanged' })
}

export const pictureOf = (id: PhotoId): Promise<Result<Picture | undefined, StorageRefusal>> => readPicture(photos, id)
export const allPictures = (): Promise<Result<readonly PhotoId[], StorageRefusal>> => picturesHere(photos)

export type PhotoTaken = {
  readonly entries: readonly Entry<Fact>[]
  /** Why the picture itself is not there, if it is not. */
  readonly without: StorageRefusal | undefined
}

/**
 * @param taken when it was; the camera's file knows
 */
export const takePhoto = async (
  file: Blob,
  of: PhotoOf,
  taken: Moment,
): Promise<Result<PhotoTaken, PhotoRefusal | NotAPicture | StorageRefusal>> => {
  const ready = await readyPicture(file)
  if (!ready.ok) return ready
  const { id, type, bytes } = ready.value
  const written = await request((world: World, { now }) =>
    keepPhoto(world, { at: taken, photo: id, of, type, bytes: bytes.byteLength }, now),
  )
  // Told of already, but perhaps not there: the phone was full, or the book came from another one.
  if (!written.ok && written.refusal.why === 'photoThere') {
    const there = await pictureOf(id)
    if (!there.ok || there.value) return written
  } else if (!written.ok) return written
  const kept = await keepPicture(id, { type, bytes })
  return ok({ entries: written.ok ? written.value : [], without: kept.ok ? undefined : kept.refusal })
}

export const keepPicture = async (id: PhotoId, picture: Picture): Promise<Result<void, StorageRefusal>> => {
  const kept = await putPicture(photos, id, picture)
  if (kept.ok) tell()
  return kept
}

/** Pictures no entry tells of any more: theirs were crossed out. None while there are entries only a newer version reads. */
export const picturesLeftOver = async (): Promise<Result<readonly PhotoId[], StorageRefusal>> => {
  // In this order: whatever is here by now was told of before it came, in this tab or another.
  const here = await allPictures()
  if (!here.ok) return here
  // Never by an older book: a photo another tab has told of meanwhile would look crossed out.
  const book = await readAll()
  if (!book.ok) return book
  const world = currentWorld()
  const told = picturesTold(world)
  return ok(world.unread.length > 0 ? [] : here.value.filter((id) => !told.has(id)))
}

/** For good: a picture is not in the ledger, and one that is crossed out comes in with no backup. */
export const deleteLeftOver = async (): Promise<Result<number, StorageRefusal>> => {
  const left = await picturesLeftOver()
  if (!left.ok) return left
  const gone = await dropPictures(photos, left.value)
  if (!gone.ok) return gone
  tell()
  return ok(left.value.length)
}
