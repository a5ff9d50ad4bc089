/** Nights nobody wrote down, nights that were too much, and holds: said only when there is one. */
import { type Day, daysBetween, type Overfed, type TonightLine } from '../../core/index.ts'
import { dayOfMonth, dayWords, nightFrom } from './dates.ts'
import { list } from './list.ts'
import { capital, inWords, millilitres } from './numbers.ts'

/** "Long Gallery and Cockle", each once. */
const tanksWords = (lines: readonly TonightLine[]): string => list([...new Set(lines.map(({ tank }) => tank.name))])

/** Every night of several plans, once, oldest first. */
export const allNights = (lines: readonly TonightLine[]): readonly Day[] =>
  [...new Set(lines.flatMap(({ unlogged }) => unlogged))].sort()

/**
 * "Last night: dosed or not?", or "No entry for six dose nights, 3 October to 13 October. What happened?" The nights of
 * several tanks are counted for each.
 */
export const unloggedWords = (lines: readonly TonightLine[], tonight: Day, named: boolean): string => {
  const nights = allNights(lines)
  const [first] = nights
  const last = nights.at(-1)
  if (first === undefined || last === undefined) return ''
  const where = named ? `, ${tanksWords(lines)}` : ''
  if (first === last) return `${capital(nightFrom(first, tonight))}${where}: dosed or not?`
  const range = `${dayWords(first, tonight)} to ${dayWords(last, tonight)}`
  if (lines.length > 1) return `No entry, ${range}: ${eachWords(lines)}. What happened?`
  return `No entry for ${inWords(nights.length)} dose nights, ${range}${where}. What happened?`
}

/** "six dose nights for Long Gallery and one for Cockle"; with two foods in one tank the food is named too. */
const eachWords = (lines: readonly TonightLine[]): string => {
  const twoFoods = new Set(lines.map(({ tank }) => tank.tank)).size < lines.length
  return list(
    lines.map(({ tank, food, unlogged }, at) => {
      const nights = at > 0 ? '' : unlogged.length === 1 ? ' dose night' : ' dose nights'
      return `${inWords(unlogged.length)}${nights} for ${tank.name}${twoFoods ? ` (${food.name})` : ''}`
    }),
  )
}

/** "Yes, last night": named by its night, for tonight has a large “Dosed” of its own. */
export const yesWords = (night: Day, tonight: Day): string => `Yes, ${nightFrom(night, tonight)}`

/** "last night", or "3 October to 13 October, Long Gallery": which nights an answer is about, for ears. */
export const askedWords = (lines: readonly TonightLine[], tonight: Day, named: boolean): string => {
  const nights = allNights(lines)
  const [first = tonight] = nights
  const last = nights.at(-1) ?? first
  const when = first === last ? nightFrom(first, tonight) : `${dayWords(first, tonight)} to ${dayWords(last, tonight)}`
  return named ? `${when}, ${tanksWords(lines)}, ${list([...new Set(lines.map(({ food }) => food.name))])}` : when
}

/** What a count comes to, before it is saved. */
export const countedWords = (used: number): string =>
  used === 0
    ? 'As the book says: nothing was given on those nights.'
    : `${capital(inWords(used))} fewer than the book says: ${used === 1 ? 'it was' : 'they were'} given on those nights.`

/** "2 mL is over the range for this tank. As it stands, the next dose waits until 14 June instead of 12 June." */
export const overfedWords = ({ total, suggested, usual }: Overfed): string =>
  `${millilitres(total)} is over the range for this tank. As it stands, the next dose waits until ${dayOfMonth(suggested)} instead of ${dayOfMonth(usual)}. See in the morning whether the water is clear.`

/** A whole bottle knocked in. Common practice, no source; short, and never in the way. */
export const farTooMuchWords =
  'So much food takes the oxygen out of the water. Now: more air and flow, the skimmer on and wet, fresh carbon, lights off, no other food. In the morning test for ammonia, and change a little water at a time. If fish gasp or lie down, ask a vet.'

export const holdOverWords = (until: Day, tonight: Day): string =>
  `The hold ${until === tonight ? 'is over' : `ended ${daysBetween(until, tonight) === 1 ? 'last night' : `on ${dayWords(until, tonight)}`}`}. Go on, or hold longer?`
