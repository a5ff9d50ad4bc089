/** Two photos of the same, then and now, side by side. */
import { daysBetween, type PhotoGroup, type PhotoNoted, type TankId, wallDay } from '../../../core/index.ts'
import { ListField } from '../../parts/ListField.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { betweenWords, groupTitle, takenOn } from '../../words/photos.ts'
import type { Reading } from '../useReading.ts'
import { Picture } from './Picture.tsx'
import { usePictures, whereHere } from './usePictures.ts'

type SideBySideProps = { readonly tank: TankId; readonly group: PhotoGroup; readonly reading: Reading }

export const SideBySide = ({ tank, group, reading }: SideBySideProps) => {
  const { photos } = group
  const { fields, change } = useDraft(`photos/${tank}/${group.key}`, { left: '', right: '' })
  const chosen = (id: string, otherwise: PhotoNoted | undefined): PhotoNoted | undefined =>
    photos.find(({ fact }) => fact.photo === id) ?? otherwise
  // Those that can be seen, unless she chooses another.
  const here = whereHere(photos, usePictures())
  const seen = here.length > 1 ? here : photos
  const left = chosen(fields.left, seen[0])
  const right = chosen(fields.right, seen.at(-1))
  if (!left || !right) return null
  const days = Math.abs(daysBetween(wallDay(left.fact.at, reading.zone), wallDay(right.fact.at, reading.zone)))
  const options = photos.map(({ fact }) => ({
    value: fact.photo as string,
    label: `${takenOn(fact.at, reading)}${fact.words ? `, ${fact.words}` : ''}`,
  }))
  const half = (label: string, { fact }: PhotoNoted, onChange: (id: string) => void) => (
    <div className="photo-half">
      <Picture fact={fact} reading={reading} square />
      {photos.length > 2 ? (
        <ListField label={label} options={options} value={fact.photo} onChange={onChange} />
      ) : (
        <p>{takenOn(fact.at, reading)}</p>
      )}
    </div>
  )
  return (
    <figure className="photo-pair" aria-label={groupTitle(group)}>
      {half('Then', left, (id) => change({ left: id }))}
      {half('Now', right, (id) => change({ right: id }))}
      <figcaption>{betweenWords(days)}</figcaption>
    </figure>
  )
}
