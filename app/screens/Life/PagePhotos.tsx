/** The photos that go on the page to show: three unless she chooses others. */
import type { PhotoGroup, PhotoNoted } from '../../../core/index.ts'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Picks } from '../../parts/Picks.tsx'
import { groupTitle, takenOn } from '../../words/photos.ts'
import { Picture } from '../Photos/Picture.tsx'
import type { Reading } from '../useReading.ts'

/** As many as stand beside each other on paper. */
const usualPhotos = 3

type Titled = PhotoNoted & { readonly title: string }
const titled = (groups: readonly PhotoGroup[]): readonly Titled[] =>
  groups.flatMap((group) => group.photos.map((photo) => ({ ...photo, title: groupTitle(group) })))

/** The newest of each group before another of the same. */
const usual = (groups: readonly PhotoGroup[]): readonly string[] => {
  const most = Math.max(0, ...groups.map(({ photos }) => photos.length))
  const inTurn = Array.from({ length: most }, (_, i) => groups.flatMap(({ photos }) => photos.at(-1 - i) ?? [])).flat()
  return inTurn.slice(0, usualPhotos).map(({ fact }) => fact.photo)
}

type ChosenProps = {
  readonly groups: readonly PhotoGroup[]
  /** By their pictures, which stay when their words change. Null: those that are usual. */
  readonly chosen: readonly string[] | null
  readonly reading: Reading
}

export const ChoosePhotos = ({
  groups,
  chosen,
  reading,
  onChange,
}: ChosenProps & { readonly onChange: (chosen: readonly string[]) => void }) => (
  <MoreExact label="Which photos stand on it?">
    <Picks
      label="Touch those to show"
      options={titled(groups).map(({ fact, title }) => ({
        value: fact.photo as string,
        label: `${title}, ${takenOn(fact.at, reading)}${fact.words ? `: ${fact.words}` : ''}`,
      }))}
      values={chosen ?? usual(groups)}
      onChange={onChange}
    />
  </MoreExact>
)

export const PagePhotos = ({ groups, chosen, reading }: ChosenProps) => {
  const shown = chosen ?? usual(groups)
  const photos = titled(groups)
    .filter(({ fact }) => shown.includes(fact.photo))
    .toSorted((a, b) => a.fact.at - b.fact.at)
  return (
    photos.length > 0 && (
      <ul className="life-page-photos">
        {photos.map(({ entry, fact, title }) => (
          <li key={entry}>
            <Picture fact={fact} reading={reading} square />
            <p className="life-quiet">
              {title}, {takenOn(fact.at, reading)}
              {fact.words && `: ${fact.words}`}
            </p>
          </li>
        ))}
      </ul>
    )
  )
}
