/** Photos in rows, each a touch away from being seen whole. */
import { useEffect, useRef, useState } from 'react'
import type { PhotoId, PhotoNoted } from '../../../core/index.ts'
import { takenOn } from '../../words/photos.ts'
import type { Reading } from '../useReading.ts'
import { PhotoWhole } from './PhotoWhole.tsx'
import { Picture } from './Picture.tsx'

export const Thumbs = ({ photos, reading }: { readonly photos: readonly PhotoNoted[]; readonly reading: Reading }) => {
  // By its picture: its entry is another once its words have changed.
  const [opened, setOpened] = useState<PhotoId>()
  const rows = useRef<HTMLDivElement>(null)
  const whole = photos.find(({ fact }) => fact.photo === opened)
  const gone = opened !== undefined && whole === undefined
  // Crossed out while it was seen: what opened it is gone, and its focus comes here.
  useEffect(() => {
    if (!gone) return
    setOpened(undefined)
    rows.current?.focus()
  }, [gone])
  return (
    <div className="photo-list" ref={rows} tabIndex={-1}>
      {photos.length > 0 && (
        <ul className="photo-rows">
          {photos.map(({ fact }) => (
            <li key={fact.photo}>
              <button type="button" className="photo-open" onClick={() => setOpened(fact.photo)}>
                <Picture fact={fact} reading={reading} square />
                <span>{takenOn(fact.at, reading)}</span>
                {fact.words && <span className="photo-words">{fact.words}</span>}
              </button>
            </li>
          ))}
        </ul>
      )}
      {whole && <PhotoWhole key={whole.entry} photo={whole} reading={reading} onClose={() => setOpened(undefined)} />}
    </div>
  )
}
