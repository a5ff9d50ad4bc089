/** One door and what stands behind it, soonest to go first. */
import { type PlaceDescribed, type Shelf, type Taken, tonight } from '../../../core/index.ts'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { doors } from '../../words/names.ts'
import type { Reading } from '../useReading.ts'
import { BottleLine } from './BottleLine.tsx'
import { LotLine } from './LotLine.tsx'

const sourceOf = (taken: Taken): string => (taken.from === 'portions' ? taken.lot : taken.bottle)

/** What each plan would take next. */
const firstOut = ({ world, now }: Reading): ReadonlySet<string> =>
  new Set(tonight(world, now).flatMap(({ servings: [first] }) => (first ? [sourceOf(first.taken)] : [])))

const named = ({ name, door }: PlaceDescribed): string =>
  name.toLowerCase().includes(doors[door]) ? name : `${name} (${doors[door]})`

export const ShelfSection = ({ shelf, reading }: { readonly shelf: Shelf; readonly reading: Reading }) => {
  const { place, lots, bottles } = shelf
  const first = firstOut(reading)
  return (
    <Section title={place ? named(place) : 'A place not on record'}>
      {lots.length + bottles.length === 0 ? (
        <p className="shelf-facts">Nothing in here.</p>
      ) : (
        <Lines>
          {bottles.map((line) => (
            <Line key={line.bottle.id}>
              <BottleLine line={line} first={first.has(line.bottle.id)} reading={reading} />
            </Line>
          ))}
          {lots.map((line) => (
            <Line key={line.lot.id}>
              <LotLine line={line} first={first.has(line.lot.id)} reading={reading} />
            </Line>
          ))}
        </Lines>
      )}
    </Section>
  )
}
