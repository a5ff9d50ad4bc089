/** One door and what stands behind it, soonest to go first. */
import {
  comesFrom,
  type FirstBecause,
  type PlaceDescribed,
  type Shelf,
  takenFirst,
  thingsBehind,
} from '../../../core/index.ts'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { firstWords } from '../../words/moving.ts'
import { doors } from '../../words/names.ts'
import type { Reading } from '../useReading.ts'
import { BottleLine } from './BottleLine.tsx'
import { LotLine } from './LotLine.tsx'
import { ShelfTotals } from './ShelfTotals.tsx'
import type { Spare } from './spare.ts'
import { UnknownLines } from './UnknownFood.tsx'

const takeFirst = (because: FirstBecause | undefined): string =>
  `take this first${because ? `: ${firstWords[because]}` : ''}`

/** What each plan would take next, and why. */
const firstOut = ({ world, now }: Reading): ReadonlyMap<string, string> =>
  new Map(takenFirst(world, now).map(({ taken, because }) => [comesFrom(taken), takeFirst(because)] as const))

const named = ({ name, door }: PlaceDescribed): string =>
  name.toLowerCase().includes(doors[door]) ? name : `${name} (${doors[door]})`

type ShelfSectionProps = { readonly shelf: Shelf; readonly spare: Spare; readonly reading: Reading }

export const ShelfSection = ({ shelf, spare, reading }: ShelfSectionProps) => {
  const { place, lots, bottles } = shelf
  const first = firstOut(reading)
  return (
    <Section title={place ? named(place) : 'A place not on record'}>
      {shelf.gone && <p className="shelf-facts">This door is gone, and this still stands behind it.</p>}
      <div className="shelf-head">
        {thingsBehind(shelf) === 0 ? (
          <p className="shelf-facts">Nothing in here.</p>
        ) : (
          <ShelfTotals shelf={shelf} spare={spare} reading={reading} />
        )}
        {place && (
          <a className="kind-link shelf-door" href={`#/food/place/${place.place}`}>
            About this {doors[place.door]}
            <span className="for-ears">: {place.name}</span>
          </a>
        )}
      </div>
      {lots.length + bottles.length > 0 && (
        <Lines>
          {bottles.map((line) => (
            <Line key={line.bottle.id}>
              <BottleLine line={line} first={first.get(line.bottle.id)} reading={reading} />
            </Line>
          ))}
          {lots.map((line) => (
            <Line key={line.lot.id}>
              <LotLine line={line} first={first.get(line.lot.id)} spare={spare} reading={reading} />
            </Line>
          ))}
        </Lines>
      )}
      <UnknownLines {...shelf.unknown} reading={reading} />
    </Section>
  )
}
