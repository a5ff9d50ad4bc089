/** How many pictures the book tells of, and how many of them are on this phone. */
import { useEffect, useState } from 'react'
import { picturesOfBook } from '../../state/photoBackup.ts'
import { onPictures } from '../../state/photos.ts'
import { useWorld } from '../../state/store.ts'

export type PicturesCounted = { readonly told: number; readonly here: number; readonly bytes: number }

/** Undefined until it is known, and where the phone cannot say. */
export const usePictures = (): PicturesCounted | undefined => {
  const { photos } = useWorld()
  const [counted, setCounted] = useState<PicturesCounted>()
  useEffect(() => {
    let here = photos.length > 0
    if (!here) return setCounted(undefined)
    const count = async () => {
      const found = await picturesOfBook()
      if (here && found.ok) setCounted({ ...found.value, here: found.value.here.length })
    }
    void count()
    const stop = onPictures(() => void count())
    return () => {
      here = false
      stop()
    }
  }, [photos])
  return counted
}
