/** What is known of a bottle, as a table. */
import {
  type Bottle,
  bottleAmount,
  type Day,
  type FoodDescribed,
  liquidLeft,
  plannedUntil,
  usableLiquid,
} from '../../../core/index.ts'
import { type Fact, Facts } from '../../parts/Facts.tsx'
import { dayInFull } from '../../words/dates.ts'
import { lifeWords, printedWords } from '../../words/food.ts'
import { placeName } from '../../words/names.ts'
import { bottleUnits, capital, millilitres, number } from '../../words/numbers.ts'
import { sniffWords } from '../../words/trouble.ts'
import { useReading } from '../useReading.ts'
import { priceFact } from './priceFact.tsx'
import { useAccounts } from './useAccounts.ts'

type BottleFactsProps = {
  readonly bottle: Bottle
  readonly food: FoodDescribed
  readonly lastGood: Day | undefined
  readonly status: string
  readonly onPrice: () => void
}

const onDay = (day: Day | undefined): string => (day ? dayInFull(day) : 'not known')

const why = (bottle: Bottle, food: FoodDescribed, lastGood: Day | undefined): string | undefined => {
  const { useBy, receivedOn } = bottle.recorded
  if (!lastGood) return undefined
  if (useBy === lastGood) {
    const past = printedWords(useBy, receivedOn)
    return `The date printed on it${bottle.openedOn ? '' : ', unopened'}.${past ? ` ${capital(past)}.` : ''}`
  }
  return lifeWords(bottle, food)
}

export const BottleFacts = ({ bottle, food, lastGood, status, onPrice }: BottleFactsProps) => {
  const reading = useReading()
  const { world, now } = reading
  const account = useAccounts().get(bottle.id)
  const { recorded, openedOn } = bottle
  const { value, unit } = recorded.size
  const usable = usableLiquid(bottle, food)
  const { amount } = lastGood ? plannedUntil(world, food.food, lastGood, now) : { amount: 0 }
  const first = bottle.smelled.find(({ found }) => found === 'first')
  const last = bottle.smelled.findLast(({ found }) => found !== 'first')
  const sniffs = [first, last].filter((sniff) => sniff !== undefined)
  const facts: readonly Fact[] = [
    { term: 'Left', fact: `${recorded.about ? 'about ' : ''}${millilitres(liquidLeft(bottle))}` },
    {
      term: 'Can be used',
      fact: millilitres(usable),
      note: `The rest stays on the walls.${amount > 0 ? ` Your plan uses ${millilitres(amount)} by its last good day.` : ''}`,
    },
    {
      term: 'Size',
      fact: `${number(value)} ${bottleUnits[unit]}`,
      note: unit === 'mL' ? undefined : millilitres(bottleAmount(value, unit)),
    },
    { term: 'Where', fact: placeName(world, bottle.place, now) },
    ...(recorded.bottledOn ? [{ term: 'Bottled', fact: onDay(recorded.bottledOn) }] : []),
    { term: 'Came', fact: onDay(recorded.receivedOn) },
    { term: 'Opened', fact: openedOn ? onDay(openedOn) : 'still sealed' },
    {
      term: 'Good until',
      fact: onDay(lastGood),
      note: [`${status}.`, why(bottle, food, lastGood)].filter(Boolean).join(' '),
    },
    ...(account ? [priceFact(account, reading, onPrice)] : []),
    ...sniffs.map(({ found, ...sniff }) => ({
      term: found === 'first' ? 'Its first sniff' : 'Last smelt at',
      fact: sniffWords({ found, ...sniff }, reading),
    })),
    { term: 'Frozen so far', fact: millilitres(bottle.frozen) },
    { term: 'Fed so far', fact: millilitres(bottle.fed) },
    ...(bottle.gone > 0 ? [{ term: 'Spilt or thrown away', fact: millilitres(bottle.gone) }] : []),
  ]
  return <Facts facts={facts} />
}
