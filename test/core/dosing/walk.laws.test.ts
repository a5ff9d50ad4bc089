/**
 * The walk is what happens to someone who lives through it, dose by dose: from any evening of a life in which nights were
 * missed or skipped, portions dropped, bags counted anew and plans put on hold. No published value: the law is that the two
 * agree, night for night, tank for tank, bag for bag.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  addDays,
  comesFrom,
  countPortions,
  type Day,
  dayFromNumber,
  holdPlan,
  type LotId,
  liquidGone,
  momentAt,
  type PlanId,
  portionsGone,
  skipNight,
  sourcesOf,
  tonight,
  type World,
  walk,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { type Book, done, london } from '../../support/given.ts'
import { amberPlan, anyHousehold, type Household, livedIn, nightAfter } from '../../support/givenHousehold.ts'
import { dose, greenFood, lineOf, mL } from '../../support/givenLab.ts'

/** Ten to midnight: in the night of the day it is, whatever the lamp. */
const bedtime = (night: Day) => momentAt(night, 1430, london)
const plansOf = ({ plans }: Household): PlanId[] =>
  plans.flatMap(({ id, retired }) => (retired ? [] : [`plan${id}` as PlanId]))

const anyBump = fc.record({
  night: fc.integer({ min: 0, max: 14 }),
  what: fc.constantFrom('missed', 'skipped', 'dropped', 'counted', 'spilt', 'held'),
  /** Which plan or bag, and how much of it. */
  which: fc.integer({ min: 0, max: 2 }),
  much: fc.integer({ min: 1, max: 4 }),
})
type Bump = typeof anyBump extends fc.Arbitrary<infer Value> ? Value : never

type Done = Readonly<Record<Bump['what'], number>>

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

const liveUntil = (household: Household, bumps: readonly Bump[], until: number) => {
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
  return { book, met: met as Done }
}

/** On, with nothing in the way, until every tank has gone without. */
const liveOn = (book: Book, plans: readonly PlanId[], from: number) => {
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

test('from any evening on, the walk is what happens to someone who lives through it, dose by dose', () => {
  const cases = tally(
    'nights missed before',
    'nights skipped before',
    'portions dropped before',
    'a bag counted before',
    'a bottle spilt from before',
    'put on hold before',
    'still on hold',
    'several tanks',
    'fixed nights',
    'lots and bottles',
    'a tank bare before another',
    'three bags or bottles used in turn',
    'food past its day on the way',
    'two tanks of one night from two bags',
  )
  const law = fc.property(
    anyHousehold,
    fc.array(anyBump, { maxLength: 8 }),
    fc.integer({ min: 0, max: 15 }),
    (household, bumps, from) => {
      const plans = plansOf(household)
      const { book, met } = liveUntil(household, bumps, from)
      const evening = bedtime(nightAfter(from))
      const world = book.world()
      const walked = walk(world, greenFood, evening)
      if (plans.length === 0) {
        expect(walked).toBeUndefined()
        return
      }
      if (!walked) throw new Error('a plan feeds it, and nothing was walked')
      const { given, bare } = liveOn(book, plans, from)
      const steps = walked.steps.map(({ on, plan, from: source, taken, amount }) => ({
        ...{ night: dayFromNumber(on), plan: plan.plan, from: comesFrom(source.source), taken, amount },
      }))
      expect(steps).toEqual(given)
      expect(walked.bare.map(({ on, plan }) => [plan.plan, dayFromNumber(on)]).sort()).toEqual([...bare].sort())
      const left = new Map(sourcesOf(book.world(), greenFood, evening).map((source) => [comesFrom(source), source]))
      for (const { source, doses, last } of walked.sources) {
        const own = steps.filter((step) => step.from === comesFrom(source))
        expect(doses).toBe(own.length)
        expect(last && dayFromNumber(last)).toBe(own.at(-1)?.night)
        expect(source.left).toBe(left.get(comesFrom(source))?.left ?? 0)
      }

      const fed = given.length > 0
      const kept = household.plans.filter(({ retired }) => !retired)
      cases.note('nights missed before', fed && met.missed > 0)
      cases.note('nights skipped before', fed && met.skipped > 0)
      cases.note('portions dropped before', fed && met.dropped > 0)
      cases.note('a bag counted before', fed && met.counted > 0)
      cases.note('a bottle spilt from before', fed && met.spilt > 0)
      cases.note('put on hold before', fed && met.held > 0)
      const states = plans.map((plan) => lineOf(world, evening, plan).state.is)
      cases.note('still on hold', fed && states.includes('held'))
      cases.note('several tanks', fed && kept.length > 1)
      cases.note('fixed nights', fed && kept.some(({ fixed }) => fixed))
      cases.note('lots and bottles', fed && world.lots.size > 0 && world.bottles.size > 0)
      cases.note('a tank bare before another', fed && new Set(bare.values()).size > 1)
      cases.note('three bags or bottles used in turn', walked.sources.filter(({ doses }) => doses > 0).length > 2)
      cases.note(
        'food past its day on the way',
        walked.sources.some(({ source, doses }) => source.left > 1000 && doses > 0 && source.lastGood !== undefined),
      )
      cases.note(
        'two tanks of one night from two bags',
        steps.some((step, at) => steps[at + 1]?.night === step.night && steps[at + 1]?.from !== step.from),
      )
    },
  )
  holds(law, 200)
  cases.expectAtLeast(5)
}, 180_000)
