/**
 * A file from the camera made ready to be kept: upright, no larger than a screen shows, and drawn anew, so that nothing is
 * left in it of where it was taken or by which phone.
 */
import { ok, type PhotoId, type Result, refuse } from '../../core/index.ts'
import type { Picture } from '../storage/photos.ts'
import { pictureName } from './pictureName.ts'

export type ReadyPicture = Picture & { readonly id: PhotoId }
export type NotAPicture = { readonly why: 'notAPicture' }

/** Pixels of its longer side, and how finely it is drawn: some 300 kB, in which a copepod on a pane is still seen. Our own judgement. */
const longestSide = 1_600
const quality = 0.82

export const readyPicture = async (file: Blob): Promise<Result<ReadyPicture, NotAPicture>> => {
  try {
    const bytes = await (await redrawn(await createImageBitmap(file))).arrayBuffer()
    return ok({ id: await pictureName(bytes), type: 'image/jpeg', bytes })
  } catch {
    // A film, a text, a format this browser does not draw, a file on a drive that is gone.
    return refuse({ why: 'notAPicture' })
  }
}

/** Throws where the browser has no memory to draw in: a black picture must not be kept for a photo. */
const redrawn = async (bitmap: ImageBitmap): Promise<Blob> => {
  const scale = Math.min(1, longestSide / Math.max(bitmap.width, bitmap.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(bitmap.width * scale))
  canvas.height = Math.max(1, Math.round(bitmap.height * scale))
  const pen = canvas.getContext('2d')
  if (!pen) throw new Error('There is nothing to draw with')
  // What a picture lets through would be black.
  pen.fillStyle = '#fff'
  pen.fillRect(0, 0, canvas.width, canvas.height)
  pen.drawImage(bitmap, 0, 0, canvas.width, canvas.height)
  bitmap.close()
  const drawn = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', quality))
  if (drawn === null) throw new Error('The picture could not be written')
  return drawn
}
