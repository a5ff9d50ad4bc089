/** Two photos of the same, then and now, side by side. */
import { daysBetween, type PhotoGroup, type PhotoNoted, wallDay } from '../../../core/index.ts'
import { ListField } from '../../parts/ListField.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { betweenWords, groupTitle, takenOn } from '../../words/photos.ts'
import type { Reading } from '../useReading.ts'
import { Picture } from './Picture.tsx'
import { usePictures, whereHere } from './usePictures.ts'

export const SideBySide = ({ group, reading }: { readonly group: PhotoGroup; readonly reading: Reading }) => {
  const { photos } = group
  const { fields, change } = useDraft(`photos/${group.key}`, { left: '', right: '' })
  const chosen = (entry: string, otherwise: PhotoNoted | undefined): PhotoNoted | undefined =>
    photos.find((photo) => photo.entry === entry) ?? otherwise
  // Those that can be seen, unless she chooses another.
  const seen = whereHere(photos, usePictures())
  const left = chosen(fields.left, seen[0] ?? photos[0])
  const right = chosen(fields.right, seen.at(-1) ?? photos.at(-1))
  if (!left || !right) return null
  const days = Math.abs(daysBetween(wallDay(left.fact.at, reading.zone), wallDay(right.fact.at, reading.zone)))
  const options = photos.map(({ entry, fact }) => ({
    value: entry as string,
    label: `${takenOn(fact.at, reading)}${fact.words ? `, ${fact.words}` : ''}`,
  }))
  const half = (label: string, { entry, fact }: PhotoNoted, onChange: (entry: string) => void) => (
    <div className="photo-half">
      <Picture fact={fact} reading={reading} square />
      {photos.length > 2 ? (
        <ListField label={label} options={options} value={entry} onChange={onChange} />
      ) : (
        <p>{takenOn(fact.at, reading)}</p>
      )}
    </div>
  )
  return (
    <figure className="photo-pair" aria-label={groupTitle(group)}>
      {half('Then', left, (entry) => change({ left: entry }))}
      {half('Now', right, (entry) => change({ right: entry }))}
      <figcaption>{betweenWords(days)}</figcaption>
    </figure>
  )
}
