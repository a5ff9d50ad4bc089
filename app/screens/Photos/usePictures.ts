/** Which pictures the book tells of, and which of them are on this phone. */
import { useEffect, useState } from 'react'
import type { PhotoId, PhotoNoted } from '../../../core/index.ts'
import { fitting, picturesOfBook } from '../../state/photoBackup.ts'
import { onPictures } from '../../state/photos.ts'
import { useWorld } from '../../state/store.ts'

export type PicturesCounted = {
  readonly told: number
  readonly here: ReadonlySet<PhotoId>
  /** How many fit into one file, and what those come to. */
  readonly fit: number
  readonly bytes: number
}

/** Undefined until it is known, and where the phone cannot say. */
export const usePictures = (): PicturesCounted | undefined => {
  const { photos } = useWorld()
  const [counted, setCounted] = useState<PicturesCounted>()
  useEffect(() => {
    let wanted = photos.length > 0
    if (!wanted) return setCounted(undefined)
    const count = async () => {
      const found = await picturesOfBook()
      if (!wanted || !found.ok) return
      const { told, here } = found.value
      const fit = fitting(here)
      const bytes = fit.reduce((sum, each) => sum + each.bytes, 0)
      setCounted({ told, here: new Set(here.map(({ photo }) => photo)), fit: fit.length, bytes })
    }
    void count()
    const stop = onPictures(() => void count())
    return () => {
      wanted = false
      stop()
    }
  }, [photos])
  return counted
}

/** Those whose pictures are here; all of them where that is not known yet. */
export const whereHere = (
  photos: readonly PhotoNoted[],
  counted: PicturesCounted | undefined,
): readonly PhotoNoted[] => (counted ? photos.filter(({ fact }) => counted.here.has(fact.photo)) : photos)
