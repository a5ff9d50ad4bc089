/** A picture as the page may show it, for as long as it is shown. */
import { useEffect, useState } from 'react'
import type { PhotoId } from '../../../core/index.ts'
import { onPictures, pictureOf } from '../../state/photos.ts'

export type Shown =
  | { readonly is: 'loading' | 'notHere' | 'unreadable' }
  | { readonly is: 'here'; readonly url: string }
const loading: Shown = { is: 'loading' }

export const usePicture = (id: PhotoId): Shown => {
  const [shown, setShown] = useState<Shown>(loading)
  useEffect(() => {
    let wanted = true
    let url: string | undefined
    const look = async () => {
      if (url) return
      const found = await pictureOf(id)
      if (!wanted || url) return
      if (!found.ok) return setShown({ is: 'unreadable' })
      if (!found.value) return setShown({ is: 'notHere' })
      url = URL.createObjectURL(new Blob([found.value.bytes], { type: found.value.type }))
      setShown({ is: 'here', url })
    }
    void look()
    // It may come while the page stands: from a backup, or after its entry.
    const stop = onPictures(() => void look())
    return () => {
      wanted = false
      stop()
      if (url) URL.revokeObjectURL(url)
    }
  }, [id])
  return shown
}
