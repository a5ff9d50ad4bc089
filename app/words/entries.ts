/** Every kind of entry as a sentence for the diary. */
import {
  type Day,
  type DoseMarks,
  doseMarks,
  type Fact,
  type FoodKind,
  type Kept,
  type Moment,
  outAlready,
  type PlanId,
  planAt,
  type ServedAny,
  type Taken,
  type TankId,
  type World,
  wallDay,
  type Zone,
} from '../../core/index.ts'
import { dayInFull, dayWords, nightFrom, nightWords } from './dates.ts'
import { foodEntryText } from './foodEntries.ts'
import { duration, lampClocks } from './lamp.ts'
import { list } from './list.ts'
import { bottleName, doors, foodName, lotName, placeName, tankName } from './names.ts'
import {
  capital,
  inWords,
  millilitreRange,
  millilitres,
  number,
  plural,
  portions,
  price,
  times,
  trays,
  water,
} from './numbers.ts'
import { questionName } from './oddities.ts'
import type { Reading } from './reading.ts'
import { reasonText } from './reasons.ts'
import { seedingEntryText } from './seedingEntries.ts'
import { watchEntryText } from './watchEntries.ts'

const kindOfFood: Record<FoodKind, string> = {
  freshNonViable: 'a fresh concentrate',
  live: 'a live food',
  shelfStable: 'a shelf-stable food',
}
const because = (why: string | undefined): string => (why ? ` (${reasonText(why)})` : '')
const kept = (how: Kept): string => (how.as === 'trays' ? `in ${trays(how.trays.length)}` : 'loose in a bag')

/** After midnight the date is tomorrow's and the night is still last evening's; several nights are told by their ends. */
const ofNight = (served: readonly ServedAny[], at: Moment, { zone, today }: Reading): string => {
  const nights = [...new Set(served.map(({ night }) => night))].sort()
  const [first] = nights
  const last = nights.at(-1)
  if (first === undefined || last === undefined) return ''
  if (first !== last)
    return ` for ${inWords(nights.length)} nights, ${dayWords(first, today)} to ${dayWords(last, today)}`
  return first === wallDay(at, zone) ? '' : ` for ${nightWords(first)}, ${dayWords(first, today)}`
}

/** "Long Gallery 1 mL of green food", each tank once, with what it had in all. */
const whatWent = (served: readonly ServedAny[], food: string, world: World, now: Moment): readonly string[] => {
  const amounts = new Map<TankId, number>()
  for (const { tank, amount } of served) amounts.set(tank, (amounts.get(tank) ?? 0) + amount)
  return [...amounts].map(([tank, amount]) => `${tankName(world, tank, now)} ${millilitres(amount)} of ${food}`)
}
const betweenNights = (from: Day, to: Day, today: Day): string =>
  from === to ? nightFrom(from, today) : `the nights from ${dayWords(from, today)} to ${dayWords(to, today)}`

/** The sentence of one entry. Names are those of today; figures are those of the entry. */
export const entryText = (fact: Fact, world: World, now: Moment, reading: Reading): string => {
  const from = (taken: Taken): string =>
    taken.from === 'portions'
      ? `${portions(taken.count)} from ${lotName(world, taken.lot)}`
      : `${millilitres(taken.amount)} from ${bottleName(world, taken.bottle, now)}`
  const planFor = (id: PlanId): string => {
    const plan = planAt(world, id, now)
    return plan ? `${tankName(world, plan.tank, now)}, ${foodName(world, plan.food, now)}` : 'a plan not on record'
  }
  switch (fact.kind) {
    case 'tankDescribed': {
      const { stated, measured, about } = fact.water
      const size = stated ?? measured
      const lamp = fact.lamp ? `, ${lampClocks[fact.lamp]}` : ''
      return `${fact.name}: ${size ? `${about ? 'about ' : ''}${water(size)}` : 'volume by measurements'}, lights out at ${fact.lightsOut}${lamp}.`
    }
    case 'lampSeen':
      return `The lamp of ${tankName(world, fact.tank, now)} goes out at ${fact.goesOut} by the wall.`
    case 'powerCut':
      return `The power was away for ${duration(fact.minutes)}: ${list(fact.tanks.map((tank) => tankName(world, tank, now)))}.`
    case 'foodDescribed':
      return `${fact.name} is ${kindOfFood[fact.sort]}: ${millilitreRange(fact.band.low, fact.band.high)} per ${water(fact.band.per)}, ${everyNights(fact.everyNights)}.`
    case 'tankRetired':
      return `${tankName(world, fact.tank, now)} is no longer kept${because(fact.why)}.`
    case 'foodRetired':
      return `${foodName(world, fact.food, now)} is no longer bought${because(fact.why)}.`
    case 'placeRetired':
      return `${capital(placeName(world, fact.place, now))} is no longer there${because(fact.why)}.`
    case 'placeDescribed':
      return `A ${doors[fact.door]} on record: ${fact.name}.`
    case 'bottleRecorded': {
      const paid = fact.price === undefined ? '' : `, ${price(fact.price)}`
      const holds = fact.about ? `, with about ${millilitres(fact.contents)} in it` : ''
      return `On record: ${bottleName(world, fact.bottle, now)}${holds}, ${placeName(world, fact.place, now)}${paid}.`
    }
    case 'bottleOpened':
      return `Opened ${bottleName(world, fact.bottle, now)} on ${dayWords(fact.openedOn, reading.today)}.`
    case 'bottleFinished':
      return `Finished ${bottleName(world, fact.bottle, now)}.`
    case 'bottlesShaken':
      return `Shook ${list(fact.bottles.map((bottle) => bottleName(world, bottle, now)))}.`
    case 'bottleMoved':
      return `Moved ${bottleName(world, fact.bottle, now)} to ${placeName(world, fact.to, now)}.`
    case 'lotMoved':
      return `Moved ${lotName(world, fact.lot)} to ${placeName(world, fact.to, now)}.`
    case 'portionsMoved':
      return `Moved ${portions(fact.count)} from ${lotName(world, fact.from)} to ${placeName(world, fact.to, now)}, as ${fact.mark}.`
    case 'wellsSeen':
      return `Touched the wells of ${lotName(world, fact.lot)}: ${fact.empty.length === 0 ? 'none' : inWords(fact.empty.length)} empty in tray ${number(fact.tray + 1)}.`
    case 'trayCut':
      return fact.after.length === 0
        ? `Tray ${number(fact.tray + 1)} of ${lotName(world, fact.lot)} is whole.`
        : `Tray ${number(fact.tray + 1)} of ${lotName(world, fact.lot)} is cut into ${inWords(fact.after.length + 1)} pieces.`
    case 'portionsFrozen':
      return `Froze ${portions(fact.portions)} of ${millilitres(fact.each)} ${kept(fact.kept)} (${fact.mark}), from ${bottleName(world, fact.bottle, now)}, on ${dayWords(fact.frozenOn, reading.today)}${fact.late ? ', late' : ''}.`
    case 'portionsOnHand':
      return `There already: ${portions(fact.portions)} of ${millilitres(fact.each)} ${kept(fact.kept)} (${fact.mark}), frozen ${fact.about ? 'about ' : 'on '}${dayInFull(fact.frozenOn)}.`
    case 'portionsCounted': {
      const gap = fact.counted - Math.max(0, fact.book)
      const change =
        gap === 0 ? 'as the book said' : `${number(Math.abs(gap))} ${gap < 0 ? 'fewer' : 'more'} than the book said`
      return `Counted ${portions(fact.counted)} in ${lotName(world, fact.lot)}, ${change}${because(fact.why)}.`
    }
    case 'liquidMeasured':
      return `Measured ${millilitres(fact.left)} in ${bottleName(world, fact.bottle, now)}; the book said ${millilitres(Math.max(0, fact.book))}${because(fact.why)}.`
    case 'portionsGone':
      return `${fact.fate === 'lost' ? 'Lost' : 'Threw away'} ${portions(fact.count)} from ${lotName(world, fact.lot)}${because(fact.why)}.`
    case 'portionsGivenAway':
      return `Gave away ${portions(fact.count)} from ${lotName(world, fact.lot)}${fact.to ? ` to ${fact.to}` : ''}.`
    case 'portionsFound':
      return `Found ${portions(fact.count)} more in ${lotName(world, fact.lot)}${because(fact.why)}.`
    case 'liquidGone':
      return `${fact.fate === 'lost' ? 'Spilt' : 'Threw away'} ${millilitres(fact.amount)} from ${bottleName(world, fact.bottle, now)}${because(fact.why)}.`
    case 'freezerThawed':
    case 'fridgeTroubled':
    case 'bottleThawed':
    case 'foodSmelled':
    case 'foodSetAside':
    case 'foodTakenBack':
    case 'lotsJoined':
    case 'purchaseRecorded':
    case 'foodOrdered':
    case 'orderingDescribed':
    case 'daysAway':
      return foodEntryText(fact, world, now, reading)
    case 'planMade':
      return `Plan for ${tankName(world, fact.tank, now)}: ${millilitres(fact.amount)} of ${foodName(world, fact.food, now)}, ${everyNights(fact.everyNights)}${fact.rhythm ? ' on fixed nights' : ''}, from ${nightWords(fact.firstNight)}, ${dayWords(fact.firstNight, reading.today)}.`
    case 'planEnded':
      return `Ended the plan for ${planFor(fact.plan)}${because(fact.why)}.`
    case 'planHeld':
      return `On hold until ${nightWords(fact.until)}, ${dayWords(fact.until, reading.today)}: ${planFor(fact.plan)}${because(fact.why)}.`
    case 'nextNightChosen':
      return `Chose ${nightWords(fact.next)}, ${dayWords(fact.next, reading.today)}, as the next for ${planFor(fact.plan)}.`
    case 'doseGiven':
    case 'doseGivenOffPlan':
    case 'doseSetAside': {
      const served = whatWent(fact.served, foodName(world, fact.food, now), world, now)
      const out = fact.kind === 'doseGiven' && outAlready(world, fact)
      const taken = takenWords(fact.taken.map(from), out)
      const aside = fact.kind === 'doseSetAside' ? ' Not taken off the stock yet.' : ''
      return `Gave ${list(served)}${ofNight(fact.served, fact.at, reading)}: ${taken}${markWords(doseMarks(world, fact))}${because(fact.why)}.${aside}`
    }
    case 'nightsMissed':
      return `Nothing given to ${tankName(world, fact.tank, now)} on ${betweenNights(fact.from, fact.to, reading.today)}${because(fact.why)}.`
    case 'nightsCounted': {
      // A night that was known may lie between: the first of all to the last of all.
      const [from] = fact.rounds.map((round) => round.from).sort()
      const to = fact.rounds
        .map((round) => round.to)
        .sort()
        .at(-1)
      const range = from && to ? ` on ${betweenNights(from, to, reading.today)}` : ''
      const counted = fact.lots.map(({ lot, counted: left }) => `${portions(left)} in ${lotName(world, lot)}`)
      const gave =
        fact.doses === 0
          ? 'nothing was given'
          : `${dosesWords(fact.doses)} of ${foodName(world, fact.food, now)} ${fact.doses === 1 ? 'was' : 'were'} given`
      return `Counted ${list(counted)}: ${gave}${range}.`
    }
    case 'nightSkipped':
      return `Skipped ${nightWords(fact.night)} for ${tankName(world, fact.tank, now)}${because(fact.why)}.`
    case 'nightUnknown':
      return `Not known whether ${tankName(world, fact.tank, now)} was fed on ${nightWords(fact.night)}${because(fact.why)}.`
    case 'livePoured':
    case 'smallLifeCounted':
    case 'kindSeen':
    case 'photoKept':
      return watchEntryText(fact, world, now)
    case 'equipmentDescribed':
    case 'tankTreated':
    case 'podHuntersNoted':
    case 'liveBottlesCame':
    case 'liveBottlesUncapped':
    case 'seedingPlanned':
    case 'seedingStepDone':
    case 'seedingWaterTaken':
    case 'seedingPoured':
    case 'seedingStopped':
    case 'letterWritten':
      return seedingEntryText(fact, world, now, reading)
    case 'noteWritten':
      return fact.tank ? `${tankName(world, fact.tank, now)}: ${fact.text}` : fact.text
    case 'phoneNamed':
      return `A phone is called “${fact.name}”.`
    case 'clashNoted':
      return 'A file said something else of an entry; what it said is kept beside it.'
    case 'entryStruckOut':
      return `Crossed out an entry${because(fact.why)}.`
    case 'questionSettled': {
      const about = questionName(fact.question)
      return `Looked at a question${about ? ` (${about})` : ''}: it is as it stands.`
    }
  }
}

/** Kept going over a count: what that had out already is not taken twice. */
const takenWords = (from: readonly string[], out: boolean): string =>
  from.length === 0
    ? out
      ? 'out of the stock already when it was counted'
      : 'from something not on record'
    : `${list(from)}${out ? '; the rest was out already when it was counted' : ''}`

/** What the entry bears visibly. */
const markWords = ({ above, past }: DoseMarks): string =>
  `${above === undefined ? '' : `, ${times(above)} the top of the range`}${past === undefined ? '' : `, ${plural(past, 'day', 'days')} past its day`}`

export const everyNights = (every: number): string =>
  every === 1 ? 'every night' : every === 2 ? 'every other night' : `every ${inWords(every)} nights`

export const zoneWords = (zone: Zone): string => zone.replace(/_/g, ' ')
export const dosesWords = (doses: number): string => plural(doses, 'dose', 'doses')
