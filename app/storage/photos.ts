/**
 * The pictures, in a database of their own: under the name their bytes give them, so that the same picture is there once,
 * and whoever takes it in can tell whether it arrived whole. What they show stands in the ledger.
 */
import type { DBSchema } from 'idb'
import type { PhotoId, PhotoKept, Result } from '../../core/index.ts'
import { type Connection, connect, type Notices, type Step, type StorageRefusal } from './connection.ts'
import { photosName } from './photosName.ts'
import { writeStrictly } from './transaction.ts'

/** Bytes and not a Blob: some browsers lose the file behind a Blob that a database holds. */
export type Picture = { readonly type: PhotoKept['type']; readonly bytes: ArrayBuffer }

interface PhotoStores extends DBSchema {
  pictures: { key: PhotoId; value: Picture }
}
export type Photos = Connection<PhotoStores>

const photosSteps: readonly Step<PhotoStores>[] = [
  (db) => {
    db.createObjectStore('pictures')
  },
]
export const openPhotos = (name: string = photosName, notices?: Notices): Photos => connect(name, photosSteps, notices)

/** The same name is the same picture: writing it once more changes nothing. */
export const putPicture = (photos: Photos, id: PhotoId, picture: Picture): Promise<Result<void, StorageRefusal>> =>
  photos.use((db) =>
    writeStrictly(db, ['pictures'], async (tx) => {
      await tx.objectStore('pictures').put(picture, id)
    }),
  )

export const readPicture = (photos: Photos, id: PhotoId): Promise<Result<Picture | undefined, StorageRefusal>> =>
  photos.use((db) => db.get('pictures', id))

export const picturesHere = (photos: Photos): Promise<Result<readonly PhotoId[], StorageRefusal>> =>
  photos.use((db) => db.getAllKeys('pictures'))

export const dropPictures = (photos: Photos, ids: readonly PhotoId[]): Promise<Result<void, StorageRefusal>> =>
  photos.use((db) =>
    writeStrictly(db, ['pictures'], async (tx) => {
      const store = tx.objectStore('pictures')
      await Promise.all(ids.map((id) => store.delete(id)))
    }),
  )
