/** How long the food lasts, night by night: whose letter is whose, why a date moved, what would use everything in time. */
import {
  type Day,
  dayFromNumber,
  daysBetween,
  type Fact,
  type LastsShown,
  type Moment,
  type MonthPage,
  type MovedBecause,
  type MovedPart,
  type PlanMade,
  type Source,
  type UseUp,
  type Walked,
  type World,
} from '../../core/index.ts'
import { dayOfMonth, dayWords, monthWords, weekday } from './dates.ts'
import { dosesWords, entryText, everyNights } from './entries.ts'
import { list } from './list.ts'
import { bottleShort, lotName, tankName } from './names.ts'
import { capital, millilitres, plural, portions } from './numbers.ts'
import type { Reading } from './reading.ts'

/** 0 is A, 25 is Z, 26 is AA. */
export const letter = (at: number): string =>
  (at < 26 ? '' : letter(Math.floor(at / 26) - 1)) + String.fromCharCode(65 + (at % 26))

/** "blue clip", "the 120 mL bottle": its food is said at the top of the page. */
export const sourceName = (world: World, source: Source): string =>
  source.from === 'portions' ? lotName(world, source.lot) : bottleShort(world, source.bottle)

/** "November 2026 to January 2027". */
export const monthsWords = (first: Day, last: Day): string => {
  if (first === last) return monthWords(first)
  const [from, to] = [monthWords(first), monthWords(last)]
  return first.slice(0, 4) === last.slice(0, 4) ? `${from.split(' ')[0]} to ${to}` : `${from} to ${to}`
}

/** "Monday, 30 November". */
export const fullNight = (night: Day, today: Day): string => `${weekday(night)}, ${dayWords(night, today)}`

/** "15 doses, 25 November to 23 December". */
export const takenWords = ({ doses, first, last }: Walked, today: Day): string => {
  if (first === undefined || last === undefined) return 'no dose'
  return `${dosesWords(doses)}, ${rangeWords(dayFromNumber(first), dayFromNumber(last), today)}`
}

/** "25 to 29 November", "30 November to 3 December", with the year once where it is not this one. */
const rangeWords = (from: Day, to: Day, today: Day): string => {
  if (from === to) return dayWords(from, today)
  if (from.slice(0, 7) === to.slice(0, 7)) return `${Number(from.slice(8))} to ${dayWords(to, today)}`
  return `${from.slice(0, 4) === to.slice(0, 4) ? dayOfMonth(from) : dayWords(from, today)} to ${dayWords(to, today)}`
}

const leftOver = ({ source }: Walked): string =>
  source.from === 'portions' ? portions(source.left) : millilitres(source.left)

/** "Good until 4 September 2028; 3 portions won’t get used." Past its day already, or of no known date, it says so. */
export const goodWords = (walked: Walked, today: Day): string => {
  const { lastGood, left } = walked.source
  const good = lastGood
    ? `${lastGood < today ? 'Past since' : 'Good until'} ${dayWords(lastGood, today)}`
    : 'No last good day is known'
  return left > 0 ? `${good}; ${leftOver(walked)} won’t get used.` : `${good}.`
}

/** What each night of a month takes, for whoever cannot see the page: "From blue clip (A) on 25, 27 and 29." */
export const monthLines = (
  { nights }: MonthPage,
  names: ReadonlyMap<Walked, { readonly letter: string; readonly name: string }>,
): readonly string[] => {
  const days = new Map<Walked, string[]>()
  for (const { day, steps } of nights)
    for (const from of new Set(steps.map((step) => step.from)))
      days.set(from, [...(days.get(from) ?? []), String(Number(day.slice(8)))])
  const taken = [...days].map(([from, on]) => {
    const known = names.get(from)
    return `From ${known?.name ?? 'something'}${known ? ` (${known.letter})` : ''} on ${list(on)}.`
  })
  const ends = nights.flatMap(({ day, lastGood }) =>
    lastGood.flatMap((from) => {
      const known = names.get(from)
      return known ? [`Last good day of ${known.name}: ${dayOfMonth(day)}.`] : []
    }),
  )
  const bare = nights.flatMap(({ day, bare: tanks }) =>
    tanks.length > 0 ? [`First night without food: ${weekday(day)}, ${dayOfMonth(day)}.`] : [],
  )
  const said = [...taken, ...ends, ...[...new Set(bare)]]
  return said.length > 0 ? said : ['No dose night.']
}

/** "Long Gallery: 30 November", where tanks do not all run out on one night. */
export const bareTankWords = (plan: PlanMade, on: number, world: World, now: Moment, today: Day): string =>
  `${tankName(world, plan.tank, now)}: ${fullNight(dayFromNumber(on), today)}`

const sooner = (days: number): string => `${plural(Math.abs(days), 'day', 'days')} ${days < 0 ? 'sooner' : 'later'}`

/** "The first night without food was 30 November when you last looked; it is 4 days sooner now." */
export const movedWords = ({ bareNight }: LastsShown, to: Day, today: Day): string =>
  `First night without food: ${dayWords(to, today)}. It was ${dayWords(bareNight, today)} before: ${sooner(daysBetween(bareNight, to))}.`

/** "2 portions lost from blue clip: 4 days sooner." */
export const partWords = ({ because, days }: MovedPart, world: World, now: Moment, reading: Reading): string =>
  `${capital(becauseWords(because, days, world, now, reading))}: ${sooner(days)}.`

const becauseWords = (because: MovedBecause, days: number, world: World, now: Moment, reading: Reading): string => {
  switch (because.about) {
    case 'nights':
      return days > 0 ? 'less was given than planned' : 'more was given than planned'
    case 'together':
      return 'what was noted, taken together'
    case 'entries':
      return factsWords(
        because.entries.map(({ fact }) => fact),
        world,
        now,
        reading,
      )
    case 'crossedOut':
      return `crossed out: ${factsWords(
        because.entries.map(({ fact }) => fact),
        world,
        now,
        reading,
      )}`
  }
}

/** Entries of one kind about one thing, in few words; any other kind in the diary's own. */
const factsWords = (facts: readonly Fact[], world: World, now: Moment, reading: Reading): string => {
  const last = facts.at(-1)
  if (!last) return 'an entry'
  const sum = (of: (fact: Fact) => number): number => facts.reduce((all, fact) => all + of(fact), 0)
  const bottle = last.kind === 'liquidGone' || last.kind === 'liquidMeasured' ? bottleShort(world, last.bottle) : ''
  switch (last.kind) {
    case 'portionsGone':
      return `${portions(sum((fact) => (fact.kind === last.kind ? fact.count : 0)))} ${last.fate === 'lost' ? 'lost from' : 'thrown away from'} ${lotName(world, last.lot)}`
    case 'portionsGivenAway':
      return `${portions(sum((fact) => (fact.kind === last.kind ? fact.count : 0)))} given away from ${lotName(world, last.lot)}`
    case 'portionsFound':
      return `${portions(sum((fact) => (fact.kind === last.kind ? fact.count : 0)))} found in ${lotName(world, last.lot)}`
    case 'portionsCounted':
      return gap(
        'counted',
        sum((fact) => (fact.kind === last.kind ? fact.counted - fact.book : 0)),
        portions,
        lotName(world, last.lot),
      )
    case 'liquidGone':
      return `${millilitres(sum((fact) => (fact.kind === last.kind ? fact.amount : 0)))} ${last.fate === 'lost' ? 'spilt from' : 'thrown away from'} ${bottle}`
    case 'liquidMeasured':
      return gap(
        'measured',
        sum((fact) => (fact.kind === last.kind ? fact.left - fact.book : 0)),
        millilitres,
        bottle,
      )
    case 'planMade': {
      const made = world.plans.get(last.plan) ?? []
      const isNew = made[0] === undefined || made[0].at >= last.at
      return `${isNew ? 'a new plan' : 'the plan'} for ${tankName(world, last.tank, now)}${isNew ? '' : ' changed'}: ${millilitres(last.amount)} ${everyNights(last.everyNights)}`
    }
    default:
      return entryText(last, world, now, reading).replace(/\.$/, '')
  }
}

/** "counted 3 portions more in blue clip". */
const gap = (how: string, by: number, amount: (value: number) => string, where: string): string =>
  by === 0 ? `${how} again in ${where}` : `${how} ${amount(Math.abs(by))} ${by > 0 ? 'more' : 'fewer'} in ${where}`

const amountWords = (left: readonly Source[]): string =>
  list(left.map((source) => (source.from === 'portions' ? portions(source.left) : millilitres(source.left))))

/** "Every night instead of every other night, and all of it would be used in time." */
export const inTimeWords = (way: UseUp, world: World, now: Moment): string => {
  const end =
    way.left.length === 0
      ? 'and all of it would be used in time.'
      : `and ${amountWords(way.left)} would still be left over.`
  if (way.by === 'sharing')
    return `${millilitres(way.amount)} ${everyNights(way.everyNights)} for ${way.tank.name} as well, ${end}`
  const often = capital(everyNights(way.everyNights))
  const [only] = way.plans
  // Several plans differ in what it was before: the new rhythm is enough.
  return way.plans.length === 1 && only
    ? `${often} instead of ${everyNights(only.everyNights)}${world.tanks.size > 1 ? ` for ${tankName(world, only.tank, now)}` : ''}, ${end}`
    : `${often} for ${list(way.plans.map(({ tank }) => tankName(world, tank, now)))}, ${end}`
}

/** Feeding more than the water takes is worse than food thrown away. Common practice, no source. */
export const inTimeCaution =
  'Feed oftener only if the water is clear by morning and the small life is thriving. If not, rather give some away, or let it go.'

/** Above the choice, for ears. */
export const whichFood = 'Which food?'
export const planIs = 'A plan is a food, an amount and every how many nights.'
export const nothingLeft =
  'Nothing that can be used is left for a dose. A bottle or portions on record, and this page says until when there is enough.'
/** On the way to its month. */
export const firstNightWords = (night: Day, today: Day): string => `Show ${dayWords(night, today)}`
/** Where there are too many to stand under every page. */
export const whichLetter = 'Which letter is which'
/** What the signs on the month pages mean, those that stand there. */
export const signsWords = (pages: readonly MonthPage[]): string => {
  const nights = pages.flatMap((page) => page.nights)
  const bare = nights.some((night) => night.bare.length > 0)
  const later = new Set(nights.flatMap((night) => (night.bare.length > 0 ? [night.day] : []))).size > 1
  return [
    'A framed letter is a dose night, and what it takes from.',
    ...(nights.some(({ lastGood }) => lastGood.length > 0)
      ? ['A letter before a bar is the last good day of that one.']
      : []),
    ...(bare ? [`The ring is the first night without food${later ? '; dotted, for another tank' : ''}.`] : []),
  ].join(' ')
}

/** What a bag or bottle is called on the month pages, and how its mark is drawn: neighbours never look alike. */
export type Named = { readonly letter: string; readonly name: string; readonly form: number }
const forms = 4

/** In the order they are first taken from; what is never taken from comes last. */
export const namedIn = (sources: readonly Walked[], world: World): ReadonlyMap<Walked, Named> => {
  const never = Number.POSITIVE_INFINITY
  const told = sources
    .filter(({ doses, source }) => doses > 0 || source.left > 0)
    .toSorted((a, b) => (a.first ?? never) - (b.first ?? never))
  return new Map(
    told.map((walked, at) => [
      walked,
      { letter: letter(at), name: sourceName(world, walked.source), form: at % forms },
    ]),
  )
}

type NightTold = {
  readonly from: readonly Named[]
  readonly ends: readonly Named[]
  readonly bare: boolean
  readonly first: boolean
  readonly tonight: boolean
}
/** Beside the number, for ears: "tonight, from A, last good day of B". */
export const takesWords = ({ from, ends, bare, first, tonight }: NightTold): string => {
  const said = [
    ...(tonight ? ['tonight'] : []),
    ...(from.length > 0 ? [`from ${list(from.map((each) => each.letter))}`] : []),
    ...(ends.length > 0 ? [`last good day of ${list(ends.map((each) => each.letter))}`] : []),
    ...(bare ? [first ? 'first night without food' : 'another tank without food'] : []),
  ]
  return said.length > 0 ? `: ${said.join(', ')}` : ''
}
