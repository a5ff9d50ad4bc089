/**
 * A bottle frozen on one day or another: nothing appears or vanishes, and what is forecast agrees with how long the food
 * lasts once it is so. No published value: laws of the sums themselves.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  addDays,
  type Bottle,
  type BottleId,
  bottleLastGood,
  type Day,
  type FoodDescribed,
  foodAt,
  freezingAhead,
  type LotId,
  lasts,
  type Moment,
  microlitres,
  momentAt,
  type World,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { given, london } from '../../support/given.ts'
import { anyHousehold, firstNight, livedIn } from '../../support/givenHousehold.ts'
import { bottleOf, foodOf, greenFood, kitchenFreezer, lab, planOf } from '../../support/givenLab.ts'

const bedtime = momentAt(firstNight, 1430, london)
const here = { now: bedtime, today: firstNight }

/** The first bottle of a household that has anything in it, and what it is frozen in. */
const anyFreezing = fc.record({
  household: anyHousehold,
  each: fc.constantFrom(400, 500, 800, 1000, 1600).map(microlitres),
  after: fc.integer({ min: 0, max: 45 }),
})

type Begun = { readonly world: World; readonly bottle: Bottle; readonly food: FoodDescribed }
const bottleIn = (world: World): Begun | undefined => {
  const bottle = world.bottles.get('bottle0' as BottleId)
  const food = foodAt(world, greenFood, bedtime)
  return bottle && food ? { world, bottle, food } : undefined
}

/** The world as it will be: so much left to pour, and the rest portions of that day. */
const asFrozen = (
  { world, bottle }: Begun,
  made: { readonly day: Day; readonly late: boolean; readonly portions: number; readonly fresh: number },
  each: number,
  residue: number,
): World => {
  const lot = 'asfrozen' as LotId
  const facts = {
    kind: 'portionsFrozen' as const,
    at: bedtime as Moment,
    lot,
    food: greenFood,
    mark: 'as frozen',
    portions: made.portions,
    each: microlitres(each),
    frozenOn: made.day,
    kept: { as: 'loose' as const },
    place: kitchenFreezer,
    bottle: bottle.id,
    taken: microlitres(0),
    late: made.late,
  }
  const lots = new Map(world.lots)
  if (made.portions > 0)
    lots.set(lot, {
      id: lot,
      entry: bottle.entry,
      made: facts,
      partOf: undefined,
      place: kitchenFreezer,
      traysSeen: new Map(),
      left: made.portions,
      fed: 0,
      gone: 0,
      observations: [],
    })
  return { ...world, lots, bottles: new Map(world.bottles).set(bottle.id, { ...bottle, left: made.fresh + residue }) }
}

test('what is fresh, what is frozen and used, what is not used and what stays on the walls are all there is', () => {
  const cases = tally('some fresh', 'portions strand', 'something over', 'all used', 'late', 'sealed', 'several tanks')
  const law = fc.property(anyFreezing, ({ household, each, after }) => {
    const begun = bottleIn(livedIn(household).world())
    if (!begun) return
    const freezing = freezingAhead(begun.world, { ...begun, each }, here)
    const then = freezing.ifFrozenOn(addDays(firstNight, after))
    const { fresh, portions, strands, over, used, wasted } = then
    expect(fresh.amount + used + wasted + freezing.residue).toBe(freezing.contents)
    expect(used).toBe((portions - strands) * each)
    expect(wasted).toBe(over + strands * each)
    expect(freezing.ifNot.fresh.amount + freezing.ifNot.wasted + freezing.residue).toBe(freezing.contents)
    for (const figure of [fresh.doses, fresh.amount, portions, strands, over, wasted, freezing.ifNot.wasted])
      expect(figure).toBeGreaterThanOrEqual(0)
    expect(strands).toBeLessThanOrEqual(portions)
    expect(over).toBeLessThan(each)
    expect(fresh.doses).toBeLessThanOrEqual(freezing.ifNot.fresh.doses)
    // Asked again it is the same answer, not a new walk.
    expect(freezing.ifFrozenOn(addDays(firstNight, after))).toBe(then)

    cases.note('some fresh', fresh.doses > 0)
    cases.note('portions strand', strands > 0)
    cases.note('something over', over > 0)
    cases.note('all used', wasted === 0 && freezing.usable > 0)
    cases.note('late', then.late && portions > 0)
    cases.note('sealed', begun.bottle.openedOn === undefined)
    cases.note('several tanks', household.plans.filter(({ retired }) => !retired).length > 1 && fresh.doses > 1)
  })
  holds(law, 400)
  cases.expectAtLeast(10)
}, 60_000)

test('what would be used in time is what the forecast of the whole shelf uses, once it is frozen so', () => {
  const cases = tally('portions strand', 'some fresh', 'other food at home', 'frozen today')
  const law = fc.property(anyFreezing, ({ household, each, after }) => {
    const begun = bottleIn(livedIn(household).world())
    if (!begun) return
    const freezing = freezingAhead(begun.world, { ...begun, each }, here)
    const day = addDays(firstNight, after)
    const then = freezing.ifFrozenOn(day)
    // Before the portions are there a night without anything else would reach for them: another story.
    const bareFirst = lasts(
      asFrozen(begun, { ...then, portions: 0, fresh: then.fresh.amount }, each, freezing.residue),
      greenFood,
      bedtime,
    )
    if (!bareFirst || (day > firstNight && bareFirst.bareNight < day)) return
    const forecast = lasts(
      asFrozen(begun, { ...then, fresh: then.fresh.amount }, each, freezing.residue),
      greenFood,
      bedtime,
    )
    const stranded = forecast?.wasted.find(
      (source) => source.from === 'portions' && source.lot === ('asfrozen' as LotId),
    )
    expect(stranded?.left ?? 0).toBe(then.strands)
    cases.note('portions strand', then.strands > 0)
    cases.note('some fresh', then.fresh.doses > 0)
    cases.note('other food at home', household.lots.length > 0 && then.portions > 0)
    cases.note('frozen today', after === 0 && then.portions > 0)
  })
  holds(law, 400)
  cases.expectAtLeast(10)
}, 60_000)

test('alone on the shelf, a bottle frozen later strands no more portions, and frozen in time loses no more than never frozen', () => {
  const cases = tally('strands', 'strands none', 'never frozen loses more')
  const anyAlone = fc.record({
    dose: fc.constantFrom(500, 1000).map(microlitres),
    every: fc.integer({ min: 1, max: 4 }),
    holds: fc.constantFrom(10, 30, 60),
    /** The freezer keeps it longer than the fridge would. */
    freezer: fc.integer({ min: 41, max: 120 }),
  })
  const law = fc.property(anyAlone, ({ dose, every, holds: mL, freezer }) => {
    const world = given(
      lab,
      foodOf(greenFood, {
        residueShare: 0,
        fridgeLife: { count: 40, unit: 'days' },
        freezerLife: { count: freezer, unit: 'days' },
      }),
      { ...planOf({ first: firstNight, amount: 1, every }), amount: dose },
      bottleOf({ holds: mL, received: firstNight, opened: firstNight }),
    ).world()
    const bottle = world.bottles.get('bottle1' as BottleId)
    const food = foodAt(world, greenFood, bedtime)
    if (!bottle || !food) throw new Error('no bottle')
    const { until, ifFrozenOn, ifNot } = freezingAhead(world, { bottle, food, each: dose }, here)
    expect(until).toBe(bottleLastGood(bottle, food))
    let before = Number.POSITIVE_INFINITY
    for (let day = firstNight; until && day <= until; day = addDays(day, 1)) {
      const { strands, wasted } = ifFrozenOn(day)
      expect(strands).toBeLessThanOrEqual(before)
      expect(wasted).toBeLessThanOrEqual(ifNot.wasted)
      before = strands
      cases.note('strands', strands > 0)
      cases.note('strands none', strands === 0)
      cases.note('never frozen loses more', wasted < ifNot.wasted)
    }
  })
  holds(law, 40)
  cases.expectAtLeast(20)
}, 60_000)
