/** Every kind of entry as a sentence for the diary. */
import {
  type Fact,
  type FoodKind,
  type Kept,
  type Moment,
  type Served,
  type Taken,
  type World,
  wallDay,
  type Zone,
} from '../../core/index.ts'
import { dayInFull, dayWords, nightWords } from './dates.ts'
import { bottleName, doors, foodName, lotName, placeName, tankName } from './names.ts'
import { inWords, millilitreRange, millilitres, number, plural, portions, price, trays, water } from './numbers.ts'
import { reasonText } from './reasons.ts'
import type { Reading } from './refusals.ts'

const kindOfFood: Record<FoodKind, string> = {
  freshNonViable: 'a fresh concentrate',
  live: 'a live food',
  shelfStable: 'a shelf-stable food',
}
const because = (why: string | undefined): string => (why ? ` (${reasonText(why)})` : '')
const kept = (how: Kept): string => (how.as === 'trays' ? `in ${trays(how.trays.length)}` : 'loose in a bag')
const list = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`

/** After midnight the date is tomorrow's and the night is still last evening's. */
const ofNight = (served: readonly Served[], at: Moment, zone: Zone): string => {
  const [first] = served
  return first && first.night !== wallDay(at, zone) ? ` for ${nightWords(first.night)}` : ''
}

/** The sentence of one entry. Names are those of today; figures are those of the entry. */
export const entryText = (fact: Fact, world: World, now: Moment, reading: Reading): string => {
  const from = (taken: Taken): string =>
    taken.from === 'portions'
      ? `${portions(taken.count)} from ${lotName(world, taken.lot)}`
      : `${millilitres(taken.amount)} from ${bottleName(world, taken.bottle, now)}`
  switch (fact.kind) {
    case 'tankDescribed': {
      const { stated, measured, about } = fact.water
      const size = stated ?? measured
      return `${fact.name}: ${size ? `${about ? 'about ' : ''}${water(size)}` : 'volume by measurements'}, lights out at ${fact.lightsOut}.`
    }
    case 'foodDescribed':
      return `${fact.name} is ${kindOfFood[fact.sort]}: ${millilitreRange(fact.band.low, fact.band.high)} per ${water(fact.band.per)}, ${everyNights(fact.everyNights)}.`
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
    case 'portionsFound':
      return `Found ${portions(fact.count)} more in ${lotName(world, fact.lot)}${because(fact.why)}.`
    case 'liquidGone':
      return `${fact.fate === 'lost' ? 'Spilt' : 'Threw away'} ${millilitres(fact.amount)} from ${bottleName(world, fact.bottle, now)}${because(fact.why)}.`
    case 'planMade':
      return `Plan for ${tankName(world, fact.tank, now)}: ${millilitres(fact.amount)} of ${foodName(world, fact.food, now)}, ${everyNights(fact.everyNights)}, from ${nightWords(fact.firstNight)}, ${dayWords(fact.firstNight, reading.today)}.`
    case 'doseGiven': {
      const served = fact.served.map(
        ({ tank, amount }) =>
          `${tankName(world, tank, now)} ${millilitres(amount)} of ${foodName(world, fact.food, now)}`,
      )
      const taken = fact.taken.length > 0 ? list(fact.taken.map(from)) : 'from something not on record'
      return `Gave ${list(served)}${ofNight(fact.served, fact.at, reading.zone)}: ${taken}${because(fact.why)}.`
    }
    case 'nightSkipped':
      return `Skipped ${nightWords(fact.night)} for ${tankName(world, fact.tank, now)}${because(fact.why)}.`
    case 'nightUnknown':
      return `Not known whether ${tankName(world, fact.tank, now)} was fed on ${nightWords(fact.night)}${because(fact.why)}.`
    case 'entryStruckOut':
      return `Crossed out an entry${because(fact.why)}.`
    case 'questionSettled':
      return 'Looked at a question: it is as it stands.'
  }
}

export const everyNights = (every: number): string =>
  every === 1 ? 'every night' : every === 2 ? 'every other night' : `every ${inWords(every)} nights`

export const zoneWords = (zone: Zone): string => zone.replace(/_/g, ' ')
export const dosesWords = (doses: number): string => plural(doses, 'dose', 'doses')
