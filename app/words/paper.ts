/** What is put on paper: labels for bags, what the pen ticked on them, a month's round. Dates are long: paper outlives a year. */
import {
  type BagToLabel,
  type Day,
  type Due,
  type LabelWarning,
  type Moment,
  type Month,
  type NightAhead,
  nudgeAt,
  type RoundAhead,
  type Shake,
  type SquaresDrawn,
  sameHour,
  type TankAhead,
  type TankDescribed,
  type TicksAsked,
  type TicksRead,
  type TicksRefusal,
  type Turn,
  type Wishes,
  type World,
} from '../../core/index.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { clock, dayInFull, dayOfMonth, monthWords, nightFrom, weekday } from './dates.ts'
import { dosesWords } from './entries.ts'
import { list } from './list.ts'
import { bottleName, bottleShort, placeName } from './names.ts'
import { capital, inWords, millilitres, number, plural, portions } from './numbers.ts'
import { nextWords } from './plan.ts'
import type { Reading } from './reading.ts'
import { refusalText } from './refusals.ts'
import { takeWords } from './tonight.ts'

/** Beside a bag's name, where it is chosen: why it is not labelled by itself. */
export const warningNames: Readonly<Record<LabelWarning, string>> = {
  aside: 'set aside',
  thawed: 'thawed',
  past: 'past its day',
}

/** "Thawed 3 July 2027: by 4 July 2027": what whoever opens the bag must know first. */
export const warningLines = ({ lot, lastGood, warnings }: BagToLabel): readonly string[] => {
  const by = lastGood && dayInFull(lastGood)
  const past = warnings.includes('past')
  return warnings.flatMap((warning) => {
    if (warning === 'aside') return ['Set aside: look and sniff before it is used']
    if (warning === 'past') return by ? [`Past since ${by}`] : []
    return lot.meltedOn ? [`Thawed ${dayInFull(lot.meltedOn)}${by && !past ? `: by ${by}` : ''}`] : []
  })
}

/** Under the mark, line by line. */
export const bagLines = (bag: BagToLabel, world: World, now: Moment): readonly string[] => {
  const { lot, food, lastGood, warnings } = bag
  const { made, joined } = lot
  const about = made.kind === 'portionsOnHand' && made.about ? 'about ' : ''
  const late = made.kind === 'portionsFrozen' && made.late ? ', late' : ''
  const good = lastGood ? `Good until ${dayInFull(lastGood)}` : 'No promise how long it keeps'
  return [
    `${food.name}, ${millilitres(made.each)} each`,
    `Frozen ${about}${dayInFull(made.frozenOn)}${late}`,
    ...joined.map((part) => `With ${number(part.count)} frozen ${dayInFull(part.frozenOn)}`),
    // A warning has said its last day already.
    ...(warnings.includes('past') || warnings.includes('thawed') ? [] : [good]),
    capital(placeName(world, lot.place, now)),
  ]
}

export const notFood = 'NOT FOOD'
export const forTheTank = 'For a fish tank. Not for people.'
export const tickRule = 'Take one out, push one through: a stroke of the pen for each portion.'

/** "40 squares, ten in a row; the first 9 ticked." */
export const squaresWords = ({ first, last, out }: SquaresDrawn): string => {
  const drawn = first === 1 ? `${plural(last, 'square', 'squares')}` : `Squares ${number(first)} to ${number(last)}`
  const ticked = out < first ? '' : `; ${first === 1 ? `the first ${number(out)}` : `up to ${number(out)}`} ticked`
  return `${drawn}, ten in a row${ticked}.`
}
export const outAlreadyWords = ({ first }: SquaresDrawn): string | undefined =>
  first === 1 ? undefined : `1 to ${number(first - 1)} are out already.`
export const laterWords = ({ last, later }: SquaresDrawn): string | undefined =>
  later === 0 ? undefined : `${number(last + 1)} to ${number(last + later)}: print this label again then.`

export const labelsAnswer = (chosen: number, bags: number): string => {
  if (bags === 0) return 'No bag has anything in it, so there is nothing to label.'
  if (chosen === 0) return 'No bag is chosen yet.'
  return chosen === 1 ? 'A label for one bag.' : `Labels for ${inWords(chosen)} bags.`
}

/** "between 2 and 12 June"; "on Friday night, 4 June" or "last night" for one. */
const betweenWords = (nights: readonly Day[], tonight: Day): string | undefined => {
  const sorted = [...nights].sort()
  const [from] = sorted
  const to = sorted.at(-1)
  if (from === undefined || to === undefined) return undefined
  if (from === to) {
    const night = nightFrom(from, tonight)
    return night.includes('day night') ? `on ${night}` : night
  }
  const sameMonth = from.slice(0, 7) === to.slice(0, 7)
  return `between ${sameMonth ? Number(from.slice(8)) : dayOfMonth(from)} and ${dayOfMonth(to)}`
}

const otherWords = (other: number): string => (other === 0 ? '' : ` and ${inWords(other)} lost or gone in another way`)

/** Doses, where each is one portion; else portions: ticks are portions. */
const ofThem = (count: number, asDoses: boolean): string => (asDoses ? dosesWords(count) : portions(count))

/** What it comes to, before it is saved: "14 ticked: the book has 9 doses from it; five more between 2 and 12 June, nights not known." */
export const ticksWords = (
  { ticked, othersTicked }: TicksAsked,
  read: TicksRead,
  other: number,
  { today }: Reading,
): string => {
  const asDoses = read.doses === read.more
  const had = read.given === 0 ? 'none' : ofThem(read.given, asDoses)
  const gone = othersTicked ? otherWords(other) : ''
  const between = betweenWords(
    read.rounds.flatMap(({ nights }) => nights),
    today,
  )
  const more = `${inWords(read.more)} more${between ? ` ${between}` : ''}`
  const nights = between?.startsWith('between') === false ? '' : ', nights not known'
  const rests = read.tonight ? ' Tonight’s is among them, so nothing more is due tonight.' : ''
  return `${number(ticked)} ticked: the book has ${had} from it${gone}; ${more}${nights}.${rests} That leaves ${portions(read.counted)}.`
}
/** When it is: "Entered: five more doses; 26 portions left." */
export const ticksEnteredWords = ({ more, doses, counted }: TicksRead): string =>
  `Entered: ${inWords(more)} more ${doses === more ? (more === 1 ? 'dose' : 'doses') : more === 1 ? 'portion' : 'portions'}; ${portions(counted)} left.`
export const bookRightWords = (missing: number): string =>
  `Tick ${inWords(missing)} more ${missing === 1 ? 'square' : 'squares'} with the pen, then both agree.`
export const squaresRightWords = (left: number): string => `The squares are right: ${portions(left)} left`
export const countSetWords = (left: number): string =>
  `Set to ${portions(left)} left. Cross out in the diary what was not given.`

export const ticksText = (refusal: TicksRefusal | StorageRefusal | { why: 'howMany' }, reading: Reading): string => {
  switch (refusal.why) {
    case 'howMany':
      return 'How many squares are ticked?'
    case 'moreThanSquares':
      return onlySoManyWords(refusal.squares)
    case 'fewerThanBook':
      return `${number(refusal.ticked)} ticked, but the book has ${dosesOrPortions(refusal.given)} from it${otherWords(refusal.other)}. Which is right?`
    case 'asTheBook':
      return `${number(refusal.ticked)} ticked, as the book has it. Nothing to enter.`
    default:
      return refusalText(refusal, reading)
  }
}
const dosesOrPortions = (given: number): string => `${portions(given)} given`
export const onlySoManyWords = (squares: number): string =>
  `This bag has only ${plural(squares, 'square', 'squares')} that can be ticked.`

/** "December 2026", "November 2026, from Wednesday 25". */
export const stretchWords = ({ from }: Month): string =>
  from.endsWith('-01') ? monthWords(from) : `${monthWords(from)}, from ${onDay(from)}`
/** "Wednesday 25": within a month that is named above. */
export const onDay = (day: Day): string => `${weekday(day)} ${Number(day.slice(8))}`

export const monthAnswer = (tanks: readonly TankAhead[], month: Month): string => {
  if (tanks.length === 0) return 'No tank is on record yet, so there is nothing to put on paper.'
  const fed = tanks.flatMap(({ tank, rounds }) => {
    const nights = new Set(rounds.flatMap((round) => round.nights.map(({ night }) => night))).size
    return rounds.length > 0
      ? [`${nights === 1 ? 'one dose night' : `${inWords(nights)} dose nights`} for ${tank.name}`]
      : []
  })
  if (fed.length === 0)
    return 'No plan says yet what one dose is and how often, so there are no nights to put on paper.'
  return `${stretchWords(month)}: ${list(fed)}.`
}
export const noPlanWords = 'No plan yet: what one dose is, and how often, is not said.'

/** "Lights out 21:00, dose at 21:20. From Sunday 28: lights out 22:00, dose at 22:20." */
export const hoursWords = (
  world: World,
  tank: TankDescribed,
  nights: readonly NightAhead[],
  wishes: Wishes,
): string | undefined => {
  const hours = sameHour(
    nights,
    ({ night, lightsOut }) =>
      `lights out ${clock(lightsOut, tank.zone)}, dose at ${clock(nudgeAt(world, tank, night, wishes), tank.zone)}`,
  )
  if (hours.length === 0) return undefined
  return hours.map(({ from, hour }, at) => (at === 0 ? `${capital(hour)}.` : `From ${onDay(from)}: ${hour}.`)).join(' ')
}

/** "One dose is 1 mL: one portion from blue clip, kitchen freezer.", then "From Saturday 12: …". */
export const turnLines = (turns: readonly Turn[], world: World, now: Moment): readonly string[] =>
  turns.map(({ serving, from }, at) => {
    const take = takeWords(serving, world, now)
    // Out of a bottle the amount is said by what is taken.
    const dose = `${serving.taken.from === 'bottle' ? '' : `${millilitres(serving.amount)}: `}${take}.`
    return at === 0 ? `One dose is ${dose}` : `From ${onDay(from)}, ${dose}`
  })

export const bareWords = (bare: Day | undefined, { nights }: RoundAhead): string | undefined => {
  if (bare === undefined) return undefined
  return bare === nights[0]?.night
    ? 'No food for it is on record: there is nothing to take on these nights.'
    : `First night without food: ${onDay(bare)}.`
}
/** "No dose night in this time. On hold until Friday night, 4 December." */
export const noNightsWords = (due: Due | undefined, today: Day): string =>
  `No dose night in this time.${due ? ` ${nextWords(due, today)}` : ''}`
export const noneLeft = 'none left'

export const neverLines = [
  'Never two in one night.',
  'Never make up for a night that was missed.',
  'If unsure whether it was given, skip: the small life grazes what is there for days.',
] as const
export const cautionLine = 'For a fish tank: NOT FOOD for people. Wash your hands. What has thawed is not frozen again.'

/** "Shake every day: the 120 mL bottle, kitchen fridge." */
export const shakeLines = (shakes: readonly Shake[], world: World, now: Moment): readonly string[] =>
  shakes.map(({ bottle, food }) => {
    const often =
      food.shakeHours === undefined || food.shakeHours === 24 ? 'every day' : `every ${number(food.shakeHours)} hours`
    const name = world.foods.size === 1 ? bottleShort(world, bottle.id) : bottleName(world, bottle.id, now)
    return `Shake ${often}: ${name}, ${placeName(world, bottle.place, now)}.`
  })
export const lossesTitle = 'Lost, dropped or given away'
export const lossesHint = 'Night, how many, from which bag:'
export const asItStoodWords = (today: Day): string =>
  `As the book stood on ${dayInFull(today)}. Afterwards, each bag’s page takes the ticks made with a pen.`
