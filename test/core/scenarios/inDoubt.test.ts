/** Smelt at, set aside, put together, without a label: worked evenings. */
import { expect, test } from 'vitest'
import {
  asideSources,
  day,
  doseMarks,
  dosesFrom,
  firstSniff,
  frozenFrom,
  giveDose,
  ifJoined,
  joinable,
  joinLots,
  type LotId,
  type Moment,
  movePortions,
  ok,
  onHand as onHandOf,
  recordFreezing,
  recordUnlabelled,
  setAside,
  smellFood,
  sourcesOf,
  stock,
  strikeOut,
  takeBack,
} from '../../../core/index.ts'
import { at, type Book, done, given, london, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  boathouseFreezer,
  bottleOf,
  dose,
  firstBottle,
  greenFood,
  greenPlan,
  kitchenFreezer,
  lab,
  lineOf,
  longGallery,
  mL,
  onHand,
  planOf,
  redClip,
} from '../../support/givenLab.ts'

const greyClip = 'greyclip' as LotId
const opened = at('2027-06-20 17:45')
const noon = at('2027-07-03 12:00')
const evening = at('2027-07-03 21:20')
const bottle = { bottle: firstBottle }

/** A bottle opened on 20 June, 40 portions frozen from it on the 22nd, a dose every other night from the 23rd. */
const household = (): Book => {
  const book = given(
    lab,
    planOf({ first: '2027-06-23', amount: 1 }),
    bottleOf({ holds: 100, received: '2027-06-20', opened: '2027-06-20' }),
  )
  book.does((world) => smellFood(world, { thing: bottle, found: 'first', words: 'sharp, like low tide' }, opened))
  book.does((world) =>
    recordFreezing(
      world,
      {
        lot: blueClip,
        mark: 'blue clip',
        portions: 40,
        each: mL(1),
        frozenOn: day('2027-06-22'),
        kept: { as: 'loose' },
        place: kitchenFreezer,
        bottle: firstBottle,
      },
      { now: at('2027-06-22 18:00'), zone: london },
    ),
  )
  for (const night of ['23', '25', '27', '29']) book.does(dose(at(`2027-06-${night} 21:20`)))
  book.does(dose(at('2027-07-01 21:20')))
  return book
}

test('a bottle that smells off is set aside; its doses of the last seven nights are told, and what was frozen from it', () => {
  const book = household()
  expect(firstSniff(book.world(), bottle)?.words).toBe('sharp, like low tide')
  expect(firstSniff(book.world(), { lot: blueClip })?.words).toBe('sharp, like low tide')
  book.does((world) => smellFood(world, { thing: bottle, found: 'off', words: 'like drains' }, noon))
  const world = book.world()
  expect(world.bottles.get(firstBottle)?.aside).toMatchObject({ because: 'smell', why: 'like drains' })
  expect(dosesFrom(world, bottle, day('2027-07-03'))).toMatchObject([
    { tank: longGallery, night: '2027-07-01', amount: 1000 },
    { night: '2027-06-29' },
    { night: '2027-06-27' },
  ])
  expect(frozenFrom(world, firstBottle)).toMatchObject([{ id: blueClip, aside: undefined }])
  // What it was frozen from being off, the portions stay as they are until she has smelt at them.
  expect(lineOf(world, evening).servings[0]?.taken).toEqual({ from: 'portions', lot: blueClip, count: 1 })
})

test('a dose crossed out is none of those a bottle gave', () => {
  const book = household()
  const last = book.entries().findLast(({ fact }) => fact.kind === 'doseGiven')
  if (!last) throw new Error('no dose')
  book.does((world) => strikeOut(world, { target: last.id }, noon))
  expect(dosesFrom(book.world(), bottle, day('2027-07-03')).map(({ night }) => night)).toEqual([
    '2027-06-29',
    '2027-06-27',
  ])
})

test('good again by a later sniff, it is back in use; a first sniff needs words', () => {
  const book = household()
  book.does((world) => smellFood(world, { thing: bottle, found: 'unsure' }, noon))
  expect(book.world().bottles.get(firstBottle)?.aside).toBeDefined()
  book.does((world) => smellFood(world, { thing: bottle, found: 'good' }, evening))
  expect(book.world().bottles.get(firstBottle)?.aside).toBeUndefined()
  expect(refusalOf(smellFood(book.world(), { thing: bottle, found: 'first' }, evening))).toEqual({ why: 'howItSmelt' })
})

test('no sniff finds a splinter: a cracked bottle stays set aside until she takes it back by her own word', () => {
  const book = household()
  book.note({
    kind: 'fridgeTroubled',
    at: noon,
    place: kitchenFreezer,
    on: day('2027-07-03'),
    bottles: [{ bottle: firstBottle, found: 'cracked' }],
  })
  book.does((world) => smellFood(world, { thing: bottle, found: 'good' }, evening))
  expect(book.world().bottles.get(firstBottle)?.aside?.because).toBe('cracked')
})

test('set aside it is proposed nowhere, counted nowhere, and taken back with one word', () => {
  const book = household()
  book.does((world) => setAside(world, { thing: { lot: blueClip }, why: 'looks brown' }, noon))
  const world = book.world()
  expect(sourcesOf(world, greenFood, noon).map(({ from }) => from)).toEqual(['bottle'])
  expect(asideSources(world, greenFood, noon)).toMatchObject([{ from: 'portions', lot: blueClip, left: 40 }])
  expect(onHandOf(stock(world, noon, day('2027-07-03')), greenFood, day('2027-07-03')).portions).toEqual([])
  expect(refusalOf(setAside(world, { thing: { lot: blueClip } }, noon))).toEqual({ why: 'asideAlready' })
  book.does((latest) => takeBack(latest, { thing: { lot: blueClip } }, evening))
  expect(sourcesOf(book.world(), greenFood, evening)).toHaveLength(2)
  expect(refusalOf(takeBack(book.world(), { thing: { lot: blueClip } }, evening))).toEqual({ why: 'notAside' })
})

test('a dose from what is set aside is asked about with its sniff, can be noted, and bears a mark', () => {
  const book = household()
  book.does((world) => smellFood(world, { thing: { lot: blueClip }, found: 'off', words: 'sour' }, noon))
  const asked = {
    plan: greenPlan,
    taken: [{ from: 'portions' as const, lot: blueClip, count: 1 }],
    amount: mL(1),
    at: evening,
  }
  expect(refusalOf(giveDose(book.world(), asked, evening))).toMatchObject({
    why: 'fromAside',
    thing: blueClip,
    aside: { because: 'smell' },
    sniff: { found: 'off', words: 'sour' },
  })
  // Sure of an amount is not sure of this.
  expect(refusalOf(giveDose(book.world(), { ...asked, sure: true }, evening))).toMatchObject({ why: 'fromAside' })
  const [given] = done(giveDose(book.world(), { ...asked, asideIsFine: true, why: 'sniffed' }, evening))
  if (given?.kind !== 'doseGiven') throw new Error('not given')
  expect(given).toMatchObject({ fromAside: true, why: 'sniffed' })
  book.note(given)
  // Taken back since, the dose was from what was set aside all the same.
  book.does((world) => takeBack(world, { thing: { lot: blueClip } }, at('2027-07-04 09:00')))
  expect(doseMarks(book.world(), given)).toMatchObject({ aside: true })
  // One dated before it was set aside asks nothing.
  const earlier = { ...asked, at: at('2027-07-02 21:20') }
  expect(giveDose(book.world(), earlier, at('2027-07-04 10:00'))).toMatchObject({
    ok: true,
    value: [{ kind: 'doseGiven' }],
  })
})

const twoBags = () =>
  given(
    lab,
    onHand({ portions: 22, each: 1, frozen: '2026-06-03' }),
    onHand({ portions: 31, each: 1, frozen: '2026-09-04', lot: redClip, place: boathouseFreezer }),
    onHand({ portions: 9, each: 0.5, frozen: '2026-09-04', lot: greyClip }),
  )
const good = (book: Book, lot: LotId, now: Moment = noon) =>
  stock(book.world(), now, day('2027-07-03'))
    .flatMap(({ lots }) => lots)
    .find((line) => line.lot.id === lot)?.lastGood

test('two bags made one keep as the older, keep both marks, and are two again when it is crossed out', () => {
  const book = twoBags()
  expect(ifJoined(book.world(), { from: blueClip, into: redClip }, noon)).toEqual({ count: 53, lastGood: '2028-06-03' })
  const before = book.world()
  const [entry] = book.does((world) => joinLots(world, { from: blueClip, into: redClip }, noon))
  expect(book.world().lots.get(redClip)).toMatchObject({
    left: 53,
    made: { mark: 'redclip' },
    joined: [{ lot: blueClip, count: 22, frozenOn: '2026-06-03' }],
  })
  expect(book.world().lots.get(blueClip)).toMatchObject({ left: 0, joinedInto: redClip })
  expect(good(book, redClip)).toBe('2028-06-03')
  if (!entry) throw new Error('nothing written')
  book.does((world) => strikeOut(world, { target: entry }, evening))
  expect(book.world().lots).toEqual(before.lots)
})

test('a part of a bag with two freezings keeps both', () => {
  const book = twoBags()
  book.does((world) => joinLots(world, { from: blueClip, into: redClip }, noon))
  book.does((world) =>
    movePortions(
      world,
      {
        from: redClip,
        to: kitchenFreezer,
        count: 5,
        lot: 'part' as LotId,
        mark: 'red clip, part 2',
        kept: { as: 'loose' },
      },
      evening,
    ),
  )
  expect(book.world().lots.get('part' as LotId)).toMatchObject({ left: 5, joined: [{ lot: blueClip }] })
  expect(good(book, 'part' as LotId)).toBe('2028-06-03')
  expect(book.world().lots.get(redClip)?.left).toBe(48)
})

test('portions of two sizes stay two bags, and one in doubt is asked about before it spoils the other', () => {
  const book = twoBags()
  const world = book.world()
  expect(refusalOf(joinLots(world, { from: greyClip, into: redClip }, noon))).toEqual({ why: 'otherSize' })
  expect(refusalOf(joinLots(world, { from: redClip, into: redClip }, noon))).toEqual({ why: 'sameBag' })
  const [red] = [world.lots.get(redClip)]
  expect(red && joinable(world, red).map(({ id }) => id)).toEqual([blueClip])
  book.does((latest) => setAside(latest, { thing: { lot: blueClip } }, noon))
  const asked = { from: blueClip, into: redClip }
  expect(refusalOf(joinLots(book.world(), asked, noon))).toEqual({ why: 'spoilsTheBag' })
  book.does((latest) => joinLots(latest, { ...asked, sure: true }, noon))
  expect(book.world().lots.get(redClip)?.aside).toBeDefined()
  expect(refusalOf(joinLots(book.world(), asked, evening))).toEqual({ why: 'nothingToJoin' })
})

test('a bag without its label is as old as the oldest it may be, marked about, and counted once', () => {
  const book = twoBags()
  const asked = {
    lot: 'nolabel' as LotId,
    mark: 'no label',
    food: greenFood,
    portions: 12,
    each: mL(1),
    kept: { as: 'loose' as const },
    place: kitchenFreezer,
    mayBe: [redClip, blueClip],
  }
  const here = { now: noon, zone: london }
  expect(refusalOf(recordUnlabelled(book.world(), { ...asked, mayBe: [] }, here))).toEqual({ why: 'whichFreezing' })
  expect(refusalOf(recordUnlabelled(book.world(), { ...asked, portions: 40, countedIn: redClip }, here))).toEqual({
    why: 'moreThanBagHas',
    left: 31,
  })
  const alone = done(recordUnlabelled(book.world(), asked, here))
  expect(alone).toMatchObject([{ kind: 'portionsOnHand', frozenOn: '2026-06-03', about: true, portions: 12 }])
  book.does((world) => ok(done(recordUnlabelled(world, { ...asked, countedIn: redClip }, here))))
  expect(good(book, asked.lot)).toBe('2028-06-03')
  expect(book.world().lots.get(redClip)?.left).toBe(19)
  const older = done(recordUnlabelled(book.world(), { ...asked, noOlderThan: day('2026-02-01') }, here))
  expect(older).toMatchObject([{ frozenOn: '2026-02-01' }])
})
