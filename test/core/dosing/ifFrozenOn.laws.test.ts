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
  type FoodDescribed,
  type FreezingAhead,
  foodAt,
  freezingAhead,
  type IfFrozen,
  type LotId,
  lasts,
  type Microlitres,
  microlitres,
  momentAt,
  type World,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { given, london } from '../../support/given.ts'
import { anyHousehold, firstNight, type Household, livedIn } from '../../support/givenHousehold.ts'
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
  household: Household,
  bottle: BottleId,
  then: IfFrozen,
  { usable }: FreezingAhead,
  each: Microlitres,
) => {
  const book = livedIn(household)
  const rest = microlitres(usable - then.fresh.amount)
  if (rest > 0 && then.portions === 0)
    book.note({ kind: 'liquidGone', at: bedtime, bottle, amount: rest, fate: 'lost' })
  if (then.portions > 0)
    book.note({
      kind: 'portionsFrozen',
      at: bedtime,
      lot: frozenLot,
      food: greenFood,
      mark: 'as frozen',
      portions: then.portions,
      each,
      frozenOn: then.day,
      kept: { as: 'loose' },
      place: kitchenFreezer,
      bottle,
      taken: rest,
      late: then.late,
    })
  return lasts(book.world(), greenFood, bedtime)
}
const frozenLot = 'asfrozen' as LotId

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
    // Where a night before that day finds nothing else it would reach for the portions: another story.
    const without = asFrozen(household, begun.bottle.id, { ...then, portions: 0 }, freezing, each)
    if (!without || (day > firstNight && without.bareNight < day)) return
    const forecast = asFrozen(household, begun.bottle.id, then, freezing, each)
    const stranded = forecast?.wasted.find((source) => source.from === 'portions' && source.lot === frozenLot)
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
