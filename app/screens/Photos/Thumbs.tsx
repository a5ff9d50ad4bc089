/** Photos in rows, each a touch away from being seen whole. */
import { useState } from 'react'
import type { PhotoNoted } from '../../../core/index.ts'
import { takenOn } from '../../words/photos.ts'
import type { Reading } from '../useReading.ts'
import { PhotoWhole } from './PhotoWhole.tsx'
import { Picture } from './Picture.tsx'

export const Thumbs = ({ photos, reading }: { readonly photos: readonly PhotoNoted[]; readonly reading: Reading }) => {
  const [opened, setOpened] = useState<PhotoNoted['entry']>()
  const whole = photos.find(({ entry }) => entry === opened)
  if (photos.length === 0) return null
  return (
    <>
      <ul className="photo-rows">
        {photos.map(({ entry, fact }) => (
          <li key={entry}>
            <button type="button" className="photo-open" onClick={() => setOpened(entry)}>
              <Picture fact={fact} reading={reading} square />
              <span>{takenOn(fact.at, reading)}</span>
              {fact.words && <span className="photo-words">{fact.words}</span>}
            </button>
          </li>
        ))}
      </ul>
      {whole && <PhotoWhole photo={whole} reading={reading} onClose={() => setOpened(undefined)} />}
    </>
  )
}
