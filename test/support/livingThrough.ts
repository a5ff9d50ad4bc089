/** A household lived through night by night, with what goes wrong in a life. Nothing here knows what a right answer is. */
import fc from 'fast-check'
import {
  addDays,
  comesFrom,
  countPortions,
  type Day,
  holdPlan,
  type LotId,
  liquidGone,
  momentAt,
  type PlanId,
  portionsGone,
  skipNight,
  tonight,
  type World,
} from '../../core/index.ts'
import { type Book, done, london } from './given.ts'
import { amberPlan, type Household, livedIn, nightAfter } from './givenHousehold.ts'
import { dose, lineOf, mL } from './givenLab.ts'

/** Ten to midnight: in the night of the day it is, whatever the lamp. */
export const bedtime = (night: Day) => momentAt(night, 1430, london)
export const plansOf = ({ plans }: Household): PlanId[] =>
  plans.flatMap(({ id, retired }) => (retired ? [] : [`plan${id}` as PlanId]))

export const anyBump = fc.record({
  night: fc.integer({ min: 0, max: 14 }),
  what: fc.constantFrom('missed', 'skipped', 'dropped', 'counted', 'spilt', 'held'),
  /** Which plan or bag, and how much of it. */
  which: fc.integer({ min: 0, max: 2 }),
  much: fc.integer({ min: 1, max: 4 }),
})
export type Bump = typeof anyBump extends fc.Arbitrary<infer Value> ? Value : never

export type Met = Readonly<Record<Bump['what'], number>>

/** What goes wrong of an evening, before anything is given. Not everything can: a bag may be empty by then. */
const bump = (book: Book, { what, which, much }: Bump, plans: readonly PlanId[], night: Day): boolean => {
  const world = book.world()
  const now = bedtime(night)
  const [plan] = plans.slice(which % Math.max(1, plans.length))
  const lot = [...world.lots.values()].find(({ id, left }) => left > 0 && id === (`lot${which}` as LotId))
  const bottle = [...world.bottles.values()].find(({ openedOn, left }) => openedOn && left > 1000)
  if (what === 'dropped' && lot) {
    book.does((asked) => portionsGone(asked, { lot: lot.id, count: Math.min(much, lot.left), fate: 'lost' }, now))
    return true
  }
  if (what === 'counted' && lot) {
    book.does((asked) => countPortions(asked, { lot: lot.id, counted: Math.max(0, lot.left + much - 2) }, now))
    return true
  }
  if (what === 'spilt' && bottle) {
    book.does((asked) => liquidGone(asked, { bottle: bottle.id, amount: mL(much / 10), fate: 'lost' }, now))
    return true
  }
  if (what === 'held' && plan) {
    const held = holdPlan(world, { plan, until: addDays(night, much) }, now)
    if (held.ok) book.note(...held.value)
    return held.ok
  }
  if (what === 'skipped' && plan) {
    const skipped = skipNight(world, { plan }, now)
    if (skipped.ok) book.note(...skipped.value)
    return skipped.ok
  }
  return false
}

/** One evening: every tank that is due gets what is proposed first, but for those that are forgotten. */
const evening = (book: Book, plans: readonly PlanId[], night: Day, forgotten: readonly PlanId[] = []) => {
  let world: World = book.world()
  const amber = tonight(world, bedtime(night)).find(({ plan }) => plan.plan === amberPlan)
  if (amber?.state.is === 'due' && amber.servings.length > 0) {
    book.does(dose(bedtime(night), { plan: amberPlan }))
    world = book.world()
  }
  const given: unknown[] = []
  const bare: PlanId[] = []
  const missed: PlanId[] = []
  for (const plan of plans) {
    const { state, servings, night: theirs } = lineOf(world, bedtime(night), plan)
    if (theirs !== night) throw new Error(`${theirs} is not tonight`)
    if (state.is !== 'due') continue
    const [serving] = servings
    if (!serving) {
      bare.push(plan)
      continue
    }
    if (forgotten.includes(plan)) {
      missed.push(plan)
      continue
    }
    book.note(...done(dose(bedtime(night), { plan })(world)))
    world = book.world()
    given.push({ night, plan, from: comesFrom(serving.taken), taken: serving.taken, amount: serving.amount })
  }
  return { given, bare, missed }
}

export const liveUntil = (household: Household, bumps: readonly Bump[], until: number) => {
  const book = livedIn(household)
  const plans = plansOf(household)
  const met = { missed: 0, skipped: 0, dropped: 0, counted: 0, spilt: 0, held: 0 }
  for (let nights = 0; nights < until; nights += 1) {
    const night = nightAfter(nights)
    const now = bumps.filter((each) => each.night === nights)
    for (const each of now) if (bump(book, each, plans, night)) met[each.what] += 1
    const forgotten = now.flatMap(({ what, which }) =>
      what === 'missed' ? plans.slice(which % Math.max(1, plans.length)).slice(0, 1) : [],
    )
    met.missed += evening(book, plans, night, forgotten).missed.length
  }
  return { book, met: met as Met }
}

/** On, with nothing in the way, until every tank has gone without. */
export const liveOn = (book: Book, plans: readonly PlanId[], from: number) => {
  const given: unknown[] = []
  const bare = new Map<PlanId, Day>()
  for (let nights = from; bare.size < plans.length; nights += 1) {
    if (nights > 400) throw new Error('the food never ends')
    const night = nightAfter(nights)
    const lived = evening(book, plans, night)
    given.push(...lived.given)
    for (const plan of lived.bare) if (!bare.has(plan)) bare.set(plan, night)
  }
  return { given, bare }
}
