/** A freezer that thawed, a fridge that was not right: worked evenings. */
import { expect, test } from 'vitest'
import {
  type BottleId,
  bottleLastGood,
  day,
  type FoundAs,
  foodAt,
  freezerThawed,
  freezingWindow,
  fridgeTroubled,
  fridgeVerdicts,
  ifThawed,
  lasts,
  letThaw,
  lotLastGood,
  moveBottle,
  movePortions,
  onHand as onHandOf,
  recordFreezing,
  shakes,
  stock,
  takenFirst,
  thawedSpare,
  thawVerdicts,
  type World,
} from '../../../core/index.ts'
import { at, type Book, given, london, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  boathouseFreezer,
  bottleOf,
  dose,
  firstBottle,
  greenFood,
  kitchenFreezer,
  kitchenFridge,
  lab,
  lineOf,
  mL,
  onHand,
  planOf,
  redClip,
} from '../../support/givenLab.ts'

const noon = at('2027-07-03 12:00')
const found = day('2027-07-03')
const here = { now: noon, zone: london }
const evening = at('2027-07-03 21:20')

/** 31 portions in the boathouse, 22 in the kitchen, one due on 3 July and every other night. */
const twoFreezers = (kitchen = 22): Book =>
  given(
    lab,
    planOf({ first: '2027-07-03', amount: 1 }),
    onHand({ portions: 31, each: 1, frozen: '2026-09-04', place: boathouseFreezer }),
    ...(kitchen > 0 ? [onHand({ portions: kitchen, each: 1, frozen: '2026-10-05', lot: redClip })] : []),
  )
const thaws = (book: Book, how: FoundAs, more: { minutesOff?: number } = {}): Book => {
  book.does((world) =>
    freezerThawed(world, { place: boathouseFreezer, on: found, lots: [{ lot: blueClip, found: how }], ...more }, here),
  )
  return book
}
const goodUntil = (world: World, lot = blueClip) => {
  const known = world.lots.get(lot)
  const food = foodAt(world, greenFood, noon)
  return known && food && lotLastGood(known, food)
}

test('out for five hours and still hard with frost, all 31 stay, and the other freezer is untouched', () => {
  const before = twoFreezers().world()
  const world = thaws(twoFreezers(), 'icy', { minutesOff: 300 }).world()
  expect(world.lots.get(blueClip)).toMatchObject({ left: 31, softOn: found, aside: undefined, meltedOn: undefined })
  expect(goodUntil(world)).toBe(goodUntil(before))
  expect(world.lots.get(redClip)).toEqual(before.lots.get(redClip))
  expect(lasts(world, greenFood, noon)).toMatchObject({ bareNight: lasts(before, greenFood, noon)?.bareNight })
})

test('thawed and cold, found on 3 July: good on the nights of 3 and 4 July and no other', () => {
  const world = thaws(twoFreezers(0), 'cold').world()
  expect(goodUntil(world)).toBe('2027-07-04')
  expect(lineOf(world, evening).servings).toHaveLength(1)
  expect(lineOf(world, at('2027-07-04 21:20')).servings).toHaveLength(1)
  expect(lineOf(world, at('2027-07-05 21:20')).servings).toEqual([])
})

test('of 31 that thawed one is used, due that night and every other, and 30 are for the bin or a culture', () => {
  const book = thaws(twoFreezers(0), 'cold')
  expect(thawedSpare(book.world(), noon)).toEqual(new Map([[blueClip, 30]]))
  expect(lasts(book.world(), greenFood, noon)).toMatchObject({
    doses: 1,
    lastNight: '2027-07-03',
    bareNight: '2027-07-05',
  })
  book.does(dose(evening))
  const later = at('2027-07-04 12:00')
  expect(thawedSpare(book.world(), later)).toEqual(new Map([[blueClip, 30]]))
  // Still in time on paper, and no dose night left: nobody counts on them, and nobody takes them first.
  const shelves = stock(book.world(), later, day('2027-07-04'))
  expect(onHandOf(shelves, greenFood, day('2027-07-04'), thawedSpare(book.world(), later)).portions).toEqual([])
  expect(takenFirst(book.world(), later)).toEqual([])
})

test('what thawed is taken before what is frozen, while a dose night is left for it', () => {
  const world = thaws(twoFreezers(), 'cold').world()
  expect(takenFirst(world, noon)).toEqual([
    { taken: { from: 'portions', lot: blueClip, count: 1 }, because: 'soonest' },
  ])
  expect(onHandOf(stock(world, noon, found), greenFood, found, thawedSpare(world, noon)).portions).toEqual([
    { each: mL(1), count: 23 },
  ])
})

test('no thawed portion is frozen again: another freezer does not take it as frozen, a fridge may, and a house may move', () => {
  const world = thaws(twoFreezers(), 'cold').world()
  const move = { from: blueClip, count: 31, lot: redClip, mark: '', kept: { as: 'loose' as const } }
  const asked = { ...move, to: kitchenFreezer, lot: 'greyclip' as typeof redClip }
  expect(refusalOf(movePortions(world, asked, noon))).toEqual({ why: 'thawedPortions', on: found })
  expect(movePortions(world, { ...asked, asTheyAre: true }, noon)).toMatchObject({ ok: true })
  expect(movePortions(world, { ...asked, to: kitchenFridge }, noon)).toMatchObject({ ok: true })
  const frozen = twoFreezers().world()
  expect(movePortions(frozen, asked, noon)).toMatchObject({ ok: true })
  expect(refusalOf(movePortions(frozen, { ...asked, to: kitchenFridge }, noon))).toEqual({ why: 'noSuchPlace' })
})

test('warm or not known it is set aside, counted on by nobody, and nothing is thrown away', () => {
  for (const how of ['warm', 'notKnown'] as const) {
    const world = thaws(twoFreezers(0), how).world()
    expect(world.lots.get(blueClip)).toMatchObject({ left: 31, aside: { because: how } })
    expect(lineOf(world, evening).servings).toEqual([])
    expect(onHandOf(stock(world, noon, found), greenFood, found).portions).toEqual([])
  }
})

test('two bags of one door are answered apart in one report, and what it comes to is said before', () => {
  const book = given(
    lab,
    planOf({ first: '2027-07-03', amount: 1 }),
    onHand({ portions: 31, each: 1, frozen: '2026-09-04', place: boathouseFreezer }),
    onHand({ portions: 22, each: 1, frozen: '2026-10-05', place: boathouseFreezer, lot: redClip }),
  )
  const lots = [
    { lot: blueClip, found: 'cold' as const },
    { lot: redClip, found: 'icy' as const },
  ]
  const asked = { place: boathouseFreezer, on: found, lots }
  const said = thawVerdicts(book.world(), asked, noon)
  expect(said).toMatchObject([
    { is: 'twoNights', left: 31, before: '2028-09-04', after: '2027-07-04' },
    { is: 'stays', left: 22, before: '2028-10-05', after: '2028-10-05' },
  ])
  const preview = lasts(ifThawed(book.world(), asked, noon), greenFood, noon)
  book.does((world) => freezerThawed(world, asked, here))
  expect(book.entries().filter(({ fact }) => fact.kind === 'freezerThawed')).toHaveLength(1)
  expect(lasts(book.world(), greenFood, noon)?.bareNight).toBe(preview?.bareNight)
  // One of the thawed, then 22 of the frozen.
  expect(preview?.bareNight).toBe('2027-08-18')
})

test('a report without a bag, of a day to come, or off for a year is refused', () => {
  const world = twoFreezers().world()
  const asked = { place: boathouseFreezer, on: found, lots: [{ lot: blueClip, found: 'icy' as const }] }
  expect(refusalOf(freezerThawed(world, { ...asked, lots: [] }, here))).toEqual({ why: 'nothingLookedAt' })
  expect(refusalOf(freezerThawed(world, { ...asked, on: day('2027-07-04') }, here))).toMatchObject({
    why: 'foundNotYet',
  })
  expect(refusalOf(freezerThawed(world, { ...asked, minutesOff: 525_600 }, here))).toEqual({
    why: 'offOutOfRange',
    mostHours: 1680,
  })
})

const bottleHome = (): Book =>
  given(
    lab,
    planOf({ first: '2027-07-03', amount: 1 }),
    bottleOf({ holds: 100, received: '2027-06-20', opened: '2027-06-20' }),
  )
const fridge = (book: Book, how: 'fine' | 'warm' | 'frozen' | 'cracked'): Book => {
  book.does((world) =>
    fridgeTroubled(world, { place: kitchenFridge, on: found, bottles: [{ bottle: firstBottle, found: how }] }, here),
  )
  return book
}
const bottleUntil = (world: World) => {
  const bottle = world.bottles.get(firstBottle)
  const food = foodAt(world, greenFood, noon)
  return bottle && food && bottleLastGood(bottle, food)
}

test('a bottle that froze whole is kept frozen as a block, good like frozen food from that day, and not shaken', () => {
  const before = bottleHome().world()
  expect(shakes(before, noon)).toHaveLength(1)
  const said = fridgeVerdicts(before, { on: found, bottles: [{ bottle: firstBottle, found: 'frozen' }] }, noon)
  expect(said).toMatchObject([{ before: '2027-08-20', after: '2029-07-03' }])
  const book = fridge(bottleHome(), 'frozen')
  expect(bottleUntil(book.world())).toBe('2029-07-03')
  expect(shakes(book.world(), noon)).toEqual([])
  expect(lineOf(book.world(), evening).servings).toEqual([])
  expect(moveBottle(book.world(), { bottle: firstBottle, to: kitchenFreezer }, noon)).toMatchObject({ ok: true })
  book.does((world) => letThaw(world, firstBottle, here))
  expect(bottleUntil(book.world())).toBe('2027-07-04')
  expect(lineOf(book.world(), evening).servings).toHaveLength(1)
  expect(lineOf(book.world(), at('2027-07-05 21:20')).servings).toEqual([])
  expect(refusalOf(letThaw(book.world(), firstBottle, here))).toEqual({ why: 'notFrozen' })
  // Frozen once more by the same fridge, it is no fresher.
  expect(bottleUntil(fridge(book, 'frozen').world())).toBe('2027-07-04')
})

test('a block, what has thawed and what is set aside are not metered into portions', () => {
  const freeze = (world: World) =>
    recordFreezing(
      world,
      {
        lot: blueClip,
        mark: 'blue clip',
        portions: 40,
        each: mL(1),
        frozenOn: found,
        kept: { as: 'loose' },
        place: kitchenFreezer,
        bottle: firstBottle,
      },
      here,
    )
  const block = fridge(bottleHome(), 'frozen')
  expect(refusalOf(freeze(block.world()))).toEqual({ why: 'frozenAlready' })
  block.does((world) => letThaw(world, firstBottle, here))
  expect(refusalOf(freeze(block.world()))).toEqual({ why: 'thawedOnce' })
  const warm = fridge(bottleHome(), 'warm').world()
  expect(refusalOf(freeze(warm))).toEqual({ why: 'setAsideFirst' })
  const [bottle] = warm.bottles.values()
  const food = foodAt(warm, greenFood, noon)
  expect(bottle && food && freezingWindow(bottle, food, found)).toEqual({ is: 'notPromised' })
  expect(freeze(fridge(bottleHome(), 'fine').world())).toMatchObject({ ok: true })
})

test('warm for too long or cracked, a bottle is set aside; one that nobody knows is refused', () => {
  for (const how of ['warm', 'cracked'] as const) {
    const world = fridge(bottleHome(), how).world()
    expect(world.bottles.get(firstBottle)?.aside?.because).toBe(how)
    expect(shakes(world, noon)).toEqual([])
    expect(lineOf(world, evening).servings).toEqual([])
  }
  const stranger = { bottle: 'nobody' as BottleId, found: 'fine' as const }
  expect(
    refusalOf(fridgeTroubled(bottleHome().world(), { place: kitchenFridge, on: found, bottles: [stranger] }, here)),
  ).toEqual({ why: 'noSuchBottle' })
})
