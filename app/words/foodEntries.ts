/** The diary's sentences for food in doubt and for buying. */
import type { BuyingFact, FoodThing, FoundAs, Moment, Price, TroubleFact, World } from '../../core/index.ts'
import { dayInFull, dayWords } from './dates.ts'
import { duration } from './lamp.ts'
import { list } from './list.ts'
import { price } from './money.ts'
import { bottleName, foodName, lotName, placeName } from './names.ts'
import { number, plural, portions } from './numbers.ts'
import type { Reading } from './reading.ts'
import { reasonText } from './reasons.ts'

export type FoodTrouble = TroubleFact | BuyingFact

/** How a bag was found. */
export const foundWords: Readonly<Record<FoundAs, string>> = {
  icy: 'still hard with frost',
  cold: 'thawed, but cold',
  warm: 'thawed and warm',
  notKnown: 'not known how',
}
const bottleFound = { fine: 'fine', warm: 'too warm', frozen: 'frozen, whole', cracked: 'frozen and cracked' } as const
const smelt = { first: 'first sniff', good: 'good', unsure: 'unsure', off: 'off' } as const

const because = (why: string | undefined): string => (why ? ` (${reasonText(why)})` : '')
const shareWords = (share: Price | undefined): string => (share === undefined ? 'not known' : price(share))

export const foodEntryText = (fact: FoodTrouble, world: World, now: Moment, { today }: Reading): string => {
  const name = (thing: FoodThing): string =>
    'bottle' in thing ? bottleName(world, thing.bottle, now) : lotName(world, thing.lot)
  const off = (minutes: number | undefined): string => (minutes === undefined ? '' : `, off for ${duration(minutes)}`)
  switch (fact.kind) {
    case 'freezerThawed': {
      const found = fact.lots.map(({ lot, found: how }) => `${lotName(world, lot)} ${foundWords[how]}`)
      return `The freezer ${placeName(world, fact.place, now)} thawed${off(fact.minutesOff)}, found on ${dayWords(fact.on, today)}: ${list(found)}.`
    }
    case 'fridgeTroubled': {
      const found = fact.bottles.map(
        ({ bottle, found: how }) => `${bottleName(world, bottle, now)} ${bottleFound[how]}`,
      )
      return `The fridge ${placeName(world, fact.place, now)} was not right${off(fact.minutesOff)}, found on ${dayWords(fact.on, today)}: ${list(found)}.`
    }
    case 'bottleThawed':
      return `Let ${bottleName(world, fact.bottle, now)} thaw on ${dayWords(fact.on, today)}.`
    case 'foodSmelled':
      return `Smelt at ${name(fact.thing)}: ${smelt[fact.found]}${fact.words ? `, ${fact.words}` : ''}.`
    case 'foodSetAside':
      return `Set ${name(fact.thing)} aside${because(fact.why)}.`
    case 'foodTakenBack':
      return `Took ${name(fact.thing)} back into use${because(fact.why)}.`
    case 'lotsJoined':
      return `Put ${portions(fact.count)} of ${lotName(world, fact.from)} into the bag of ${lotName(world, fact.into)}.`
    case 'purchaseRecorded': {
      const things = fact.things.map(({ bottle, what, count, share }) => {
        const it = bottle ? bottleName(world, bottle, now) : (what ?? 'something else')
        return `${count === undefined || count === 1 ? '' : `${number(count)} × `}${it} ${shareWords(share)}`
      })
      const paid = `${shareWords(fact.paid)}${fact.postage === undefined ? '' : ` and ${shareWords(fact.postage)} postage`}`
      return `A purchase${fact.on ? ` on ${dayWords(fact.on, today)}` : ''}, ${paid}: ${list(things)}.`
    }
    case 'foodOrdered':
      return `Ordered ${foodName(world, fact.food, now)} on ${dayWords(fact.on, today)}${fact.comes ? `, to come on ${dayWords(fact.comes, today)}` : ''}.`
    case 'orderingDescribed':
      return `An order takes ${plural(fact.leadDays, 'day', 'days')} to come, and ${plural(fact.cushionDays, 'day', 'days')} to spare.`
    case 'daysAway':
      return fact.from === fact.to
        ? `Nobody at home on ${dayInFull(fact.from)}.`
        : `Nobody at home from ${dayWords(fact.from, today)} to ${dayWords(fact.to, today)}.`
  }
}
