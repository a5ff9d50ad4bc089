/** What is past its day, as a list to take to the bin: one touch each, when it is in there. Nothing is thrown away for her. */
import {
  type BottleShelved,
  type LotShelved,
  liquidGone,
  liquidLeft,
  portionsGone,
  portionsLeft,
  type Shelf,
} from '../../../core/index.ts'
import { Button } from '../../parts/Actions.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { bottleName, keepingWords, placeName } from '../../words/names.ts'
import { capital, millilitres, portions } from '../../words/numbers.ts'
import type { Reading } from '../useReading.ts'
import { Refused } from './Refused.tsx'
import type { Spare } from './spare.ts'
import { type FormAsk, placed, useAct } from './useAct.ts'

const why = 'pastItsDay'

const binLot =
  ({ lot: { id } }: LotShelved): FormAsk =>
  (world, { now }) => {
    const lot = world.lots.get(id)
    return placed(portionsGone(world, { lot: id, count: lot ? portionsLeft(lot) : 0, fate: 'discarded', why }, now), '')
  }
const binBottle =
  ({ bottle: { id }, left }: BottleShelved): FormAsk =>
  (world, { now }) => {
    const bottle = world.bottles.get(id)
    const amount = bottle ? liquidLeft(bottle) : left
    return placed(liquidGone(world, { bottle: id, amount, fate: 'discarded', why }, now), '')
  }

type ForTheBinProps = { readonly shelves: readonly Shelf[]; readonly spare: Spare; readonly reading: Reading }

export const ForTheBin = ({ shelves, spare, reading }: ForTheBinProps) => {
  const { world, now } = reading
  const act = useAct()
  // What is set aside or has thawed stands in a list of its own.
  const past = shelves.flatMap(({ bottles, lots }) => [
    ...bottles
      .filter(({ bottle, keeping }) => keeping.is === 'past' && !bottle.aside)
      .map((line) => ({
        id: line.bottle.id,
        name: capital(bottleName(world, line.bottle.id, now)),
        href: `#/food/bottle/${line.bottle.id}`,
        says: `${millilitres(line.left)}, ${placeName(world, line.bottle.place, now)}, ${keepingWords(line.keeping, line.lastGood, reading)}`,
        ask: binBottle(line),
      })),
    ...lots
      .filter(({ lot, keeping }) => keeping.is === 'past' && !lot.aside && !spare.has(lot.id))
      .map((line) => ({
        id: line.lot.id,
        name: line.lot.made.mark,
        href: `#/food/lot/${line.lot.id}`,
        says: `${portions(line.left)}, ${placeName(world, line.lot.place, now)}, ${keepingWords(line.keeping, line.lastGood, reading)}`,
        ask: binLot(line),
      })),
  ])
  if (past.length === 0) return null
  return (
    <Section title="Past its day">
      <p className="shelf-facts">
        Thrown away, kept for a culture at your own risk, or given once with a reason: your choice.
      </p>
      <Refused act={act} />
      <Lines>
        {past.map(({ id, name, href, says, ask }) => (
          <Line
            key={id}
            end={
              <Button kind="quiet" waiting={act.busy} onAct={() => void act.send(ask)}>
                In the bin<span className="for-ears">: {name}</span>
              </Button>
            }
          >
            <a className="kind-link" href={href}>
              {name}
            </a>
            <br />
            <span className="shelf-facts">{says}.</span>
          </Line>
        ))}
      </Lines>
    </Section>
  )
}
