/** The photos of one thing, and a way to add one. */
import { useEffect, useRef, useState } from 'react'
import { type PhotoNoted, type PhotoOf, photosOf } from '../../../core/index.ts'
import { LinkButton } from '../../parts/Actions.tsx'
import type { Reading } from '../useReading.ts'
import { AddPhoto } from './AddPhoto.tsx'
import { Thumbs } from './Thumbs.tsx'

type PhotosOfProps = {
  readonly of: PhotoOf
  /** For ears: two of them may stand on a page. */
  readonly about: string
  /** Others than those told of this very thing: of a spot, of a bottle corrected since. */
  readonly photos?: readonly PhotoNoted[]
  readonly hint?: string
  /** The field stands there at once. */
  readonly open?: boolean
  readonly reading: Reading
}

export const PhotosOf = ({ of, about, photos, hint, open = false, reading }: PhotosOfProps) => {
  const [adding, setAdding] = useState(open)
  const panel = useRef<HTMLDivElement>(null)
  // The button that opened it is gone; its focus comes here rather than to nowhere.
  useEffect(() => {
    if (adding && !open) panel.current?.focus()
  }, [adding, open])
  return (
    <>
      <Thumbs photos={photos ?? photosOf(reading.world, of)} reading={reading} />
      {adding ? (
        <div ref={panel} tabIndex={-1}>
          <AddPhoto of={of} about={about} hint={hint} reading={reading} />
        </div>
      ) : (
        <LinkButton onAct={() => setAdding(true)}>
          Add a photo<span className="for-ears">: {about}</span>
        </LinkButton>
      )}
    </>
  )
}
