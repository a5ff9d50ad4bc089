/** A photo from the camera or from those the phone has: kept at once, because a phone may forget the page for its camera. */
import { useState } from 'react'
import { type Entry, type Fact, type Moment, moment, type PhotoKept, type PhotoOf } from '../../../core/index.ts'
import { FileField } from '../../parts/FileField.tsx'
import { Loading } from '../../parts/Loading.tsx'
import { now } from '../../state/clock.ts'
import { takePhoto } from '../../state/photos.ts'
import { keptWords, photoRefusal, withoutText } from '../../words/photos.ts'
import { refusalText } from '../../words/refusals.ts'
import { SaidAndUndo, type SaidDone } from '../SaidAndUndo.tsx'
import type { Reading } from '../useReading.ts'
import { Picture } from './Picture.tsx'

type AddPhotoProps = {
  readonly of: PhotoOf
  readonly label?: string
  /** For ears: two such fields may stand on a page. */
  readonly about?: string | undefined
  readonly hint?: string | undefined
  /** The last one of the same: held beside it, the next is taken alike. */
  readonly like?: PhotoKept | undefined
  readonly reading: Reading
}

type Adding = { readonly busy: boolean; readonly said?: SaidDone | undefined; readonly wrong?: string | undefined }
const idle: Adding = { busy: false }

export const AddPhoto = ({ of, label = 'Add a photo', about, hint, like, reading }: AddPhotoProps) => {
  const [adding, setAdding] = useState<Adding>(idle)
  const add = async (files: readonly File[]) => {
    setAdding({ busy: true })
    const written: Entry<Fact>[] = []
    let kept = 0
    let wrong: string | undefined
    try {
      for (const file of files) {
        const taken = await takePhoto(file, of, takenAt(file))
        if (!taken.ok) {
          wrong = photoRefusal(taken.refusal, reading)
          continue
        }
        const { entries, without } = taken.value
        written.push(...entries)
        if (without === undefined) kept += 1
        else wrong = without.why === 'storageFull' ? withoutText : refusalText(without, reading)
      }
    } finally {
      setAdding({ busy: false, said: kept > 0 ? { says: keptWords(kept), written } : undefined, wrong })
    }
  }
  return (
    <div className="photo-add">
      {like && (
        <figure className="photo-like">
          <Picture fact={like} reading={reading} square />
          <figcaption>The last one. Hold the phone so that the same stands in the same corner.</figcaption>
        </figure>
      )}
      <FileField
        label={label}
        about={about}
        hint={hint}
        error={adding.wrong}
        accept="image/*"
        multiple
        onFiles={(files) => !adding.busy && void add(files)}
      />
      {adding.busy && <Loading says="Keeping it …" />}
      <SaidAndUndo said={adding.said} reading={reading} onUndone={() => setAdding(idle)} />
    </div>
  )
}

/** Phones had cameras from then on: a date before it is a clock that was never set. */
const firstCameras = Date.UTC(2000, 0, 1)

/** When the file was made; now, where it cannot say. */
const takenAt = ({ lastModified }: File): Moment => {
  const at = now()
  return lastModified > firstCameras && lastModified < at ? moment(lastModified) : at
}
