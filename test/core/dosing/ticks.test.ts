/** Squares ticked with a pen, told to the book later. Checked only against our own worked examples: counts by hand. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  countPortions,
  countTicks,
  drawnSquares,
  portionsGone,
  readTicks,
  skipNight,
  squaresOf,
  strikeOut,
  type World,
} from '../../../core/index.ts'
import { at, type Book, done, given, refusalOf } from '../../support/given.ts'
import {
  blueClip,
  cockle,
  cocklePlan,
  dose,
  greenFood,
  greenPlan,
  lab,
  lineOf,
  longGallery,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../../support/givenLab.ts'
import { withPortions } from '../../support/givenRound.ts'

/** Nine doses in the book, 15 to 31 May; then the phone stays in a drawer. */
const nineGiven = (portions = 40): Book => {
  const book = withPortions('2027-05-15', portions)
  for (let date = 15; date <= 31; date += 2) book.does(dose(at(`2027-05-${date} 21:12`)))
  return book
}
const noon = at('2027-06-13 12:00')
const ticked = (count: number, othersTicked = true) => ({ lot: blueClip, ticked: count, othersTicked })
const squares = (world: World) => {
  const lot = world.lots.get(blueClip)
  if (!lot) throw new Error('no bag')
  return squaresOf(world, lot)
}

describe('14 ticked, where the book has nine', () => {
  test('five more were given between 2 and 12 June, on nights that are not invented', () => {
    const book = nineGiven()
    expect(squares(book.world())).toEqual({ all: 40, given: 9, other: 0 })
    book.does((world) => countTicks(world, ticked(14), noon))
    expect(book.entries().at(-1)?.fact).toEqual({
      kind: 'nightsCounted',
      at: noon,
      food: greenFood,
      rounds: [{ plan: greenPlan, tank: longGallery, from: '2027-06-02', to: '2027-06-12' }],
      lots: [{ lot: blueClip, counted: 26, book: 31 }],
      doses: 5,
      amount: 5000,
    })
    const world = book.world()
    expect(world.lots.get(blueClip)).toMatchObject({ left: 26, fed: 14, gone: 0 })
    expect(world.fed.get(greenFood)).toEqual({ doses: 14, amount: 14_000 })
    expect(lineOf(world, noon).unlogged).toEqual([])
    expect(world.oddities).toEqual([])
  })

  test('crossed out, everything is as before, and the nights are open again', () => {
    const book = nineGiven()
    const [entry] = book.does((world) => countTicks(world, ticked(14), noon))
    if (entry) book.does((world) => strikeOut(world, { target: entry, why: 'mistake' }, noon))
    expect(book.world().lots.get(blueClip)).toMatchObject({ left: 31, fed: 9 })
    expect(lineOf(book.world(), noon).unlogged).toHaveLength(6)
  })

  test('told twice it is nothing new the second time', () => {
    const book = nineGiven()
    book.does((world) => countTicks(world, ticked(14), noon))
    expect(refusalOf(countTicks(book.world(), ticked(14), noon))).toEqual({ why: 'asTheBook', ticked: 14 })
  })
})

test('numbers that cannot be are refused', () => {
  const world = nineGiven().world()
  expect(refusalOf(countTicks(world, ticked(41), noon))).toEqual({ why: 'moreThanSquares', squares: 40 })
  expect(refusalOf(countTicks(world, ticked(7), noon))).toEqual({
    why: 'fewerThanBook',
    ticked: 7,
    given: 9,
    other: 0,
    wouldBeLeft: 33,
  })
  expect(refusalOf(countTicks(world, ticked(2.5), noon))).toEqual({ why: 'notACount', asked: 2.5 })
  expect(refusalOf(countTicks(world, { ...ticked(2), lot: redClip }, noon))).toEqual({ why: 'noSuchLot' })
})

test('what was dropped has a tick too, unless she says it has none', () => {
  const book = nineGiven()
  book.does((world) =>
    portionsGone(world, { lot: blueClip, count: 2, fate: 'lost', why: 'dropped' }, at('2027-06-01 19:00')),
  )
  expect(squares(book.world())).toEqual({ all: 40, given: 9, other: 2 })
  expect(done(readTicks(book.world(), ticked(14), noon))).toMatchObject({ counted: 26, more: 3, given: 9 })
  expect(done(readTicks(book.world(), ticked(14, false), noon))).toMatchObject({ counted: 24, more: 5, given: 9 })
  expect(refusalOf(readTicks(book.world(), ticked(10), noon))).toMatchObject({ why: 'fewerThanBook', other: 2 })
  expect(refusalOf(readTicks(book.world(), ticked(39, false), noon))).toEqual({ why: 'moreThanSquares', squares: 38 })
})

test('what was found at a count has squares too', () => {
  const book = nineGiven()
  book.does((world) => countPortions(world, { lot: blueClip, counted: 33 }, at('2027-06-01 19:00')))
  expect(squares(book.world())).toEqual({ all: 42, given: 9, other: 0 })
})

test('a bag that took in another has squares for both', () => {
  const book = nineGiven()
  book.note(...onHand({ portions: 12, each: 1, frozen: '2027-02-05', lot: redClip })(book.world()))
  book.note({ kind: 'lotsJoined', at: at('2027-06-01 19:00'), from: redClip, into: blueClip, count: 12 })
  book.does((world) => portionsGone(world, { lot: blueClip, count: 2, fate: 'lost' }, at('2027-06-01 20:00')))
  expect(squares(book.world())).toEqual({ all: 52, given: 9, other: 2 })
})

describe('more ticks than dose nights gone by', () => {
  const answered = (): Book => {
    const book = nineGiven()
    book.does((world) => skipNight(world, { plan: greenPlan }, at('2027-06-02 21:30')))
    return book
  }
  const due = at('2027-06-04 22:10')

  test('tonight’s is among them once the lamp is out: less is safe', () => {
    const book = answered()
    expect(lineOf(book.world(), due).state.is).toBe('due')
    book.does((world) => countTicks(world, ticked(10), due))
    expect(book.entries().at(-1)?.fact).toMatchObject({
      rounds: [{ from: '2027-06-04', to: '2027-06-04' }],
      doses: 1,
    })
    expect(lineOf(book.world(), due).state).toMatchObject({ is: 'resting', next: '2027-06-06' })
  })

  test('by day nobody has fed tonight yet: it stays due, and no night is named', () => {
    const book = answered()
    book.does((world) => countTicks(world, ticked(10), at('2027-06-04 12:10')))
    expect(book.entries().at(-1)?.fact).toMatchObject({ rounds: [], doses: 1 })
    expect(lineOf(book.world(), due).state.is).toBe('due')
  })

  test('a second bag’s ticks belong to the nights the first bag’s have settled', () => {
    const book = nineGiven()
    book.note(...onHand({ portions: 12, each: 1, frozen: '2027-02-05', lot: redClip })(book.world()))
    const evening = at('2027-06-14 22:10')
    book.does((world) => countTicks(world, ticked(12), evening))
    book.does((world) => countTicks(world, { lot: redClip, ticked: 3, othersTicked: true }, evening))
    expect(book.entries().at(-1)?.fact).toMatchObject({ rounds: [], doses: 3, lots: [{ counted: 9, book: 12 }] })
    expect(lineOf(book.world(), evening).state.is).toBe('due')
  })
})

test('two portions a dose are half as many doses; a portion far larger than the dose reaches the tank in part', () => {
  const book = given(
    lab,
    planOf({ first: '2027-05-15', amount: 1 }),
    onHand({ portions: 40, each: 0.5, frozen: '2027-01-05' }),
  )
  expect(done(readTicks(book.world(), ticked(7), noon))).toMatchObject({ more: 7, doses: 4, amount: 3500 })
  const large = given(
    lab,
    planOf({ first: '2027-05-15', amount: 0.5 }),
    onHand({ portions: 40, each: 1, frozen: '2027-01-05' }),
  )
  expect(done(readTicks(large.world(), ticked(7), noon))).toMatchObject({ more: 7, doses: 7, amount: 3500 })
})

test('without a plan they are doses all the same, for no tank in particular', () => {
  const book = given(lab, onHand({ portions: 40, each: 1, frozen: '2027-01-05' }))
  book.does((world) => countTicks(world, ticked(3), noon))
  expect(book.entries().at(-1)?.fact).toMatchObject({ rounds: [], doses: 3, amount: 3000 })
})

test('nights before the bag was there are none of its nights, and two tanks that share it are both settled', () => {
  const book = given(
    lab,
    tankOf(cockle, usGal(60)),
    planOf({ first: '2027-05-15', amount: 1 }),
    planOf({ first: '2027-06-02', amount: 1, tank: cockle, plan: cocklePlan }),
    onHand({ portions: 40, each: 1, frozen: '2027-06-05' }),
  )
  const { rounds } = done(readTicks(book.world(), ticked(5), noon))
  expect(rounds).toEqual([
    { plan: greenPlan, nights: ['2027-06-06', '2027-06-08', '2027-06-10', '2027-06-12'] },
    { plan: cocklePlan, nights: ['2027-06-06', '2027-06-08', '2027-06-10', '2027-06-12'] },
  ])
})

test('law: told in two parts it comes to the same as told at once', () => {
  let hard = 0
  fc.assert(
    fc.property(
      fc.integer({ min: 9, max: 40 }),
      fc.integer({ min: 9, max: 40 }),
      fc.integer({ min: 0, max: 5 }),
      (one, two, lost) => {
        const [first, second] = [Math.min(one, two), Math.max(one, two)]
        const begun = (): Book => {
          const book = nineGiven()
          if (lost > 0) book.does((world) => portionsGone(world, { lot: blueClip, count: lost, fate: 'lost' }, noon))
          return book
        }
        const tell = (book: Book, count: number) => {
          const asked = countTicks(book.world(), ticked(count), noon)
          if (asked.ok) book.note(...asked.value)
          return asked.ok
        }
        const [atOnce, inTwo] = [begun(), begun()]
        const told = tell(atOnce, second)
        const both = tell(inTwo, first)
        if (tell(inTwo, second) && both) hard += 1
        const [whole, parts] = [atOnce.world(), inTwo.world()]
        expect(parts.lots.get(blueClip)?.left).toBe(whole.lots.get(blueClip)?.left)
        expect(parts.lots.get(blueClip)?.fed).toBe(whole.lots.get(blueClip)?.fed)
        expect(parts.fed.get(greenFood)).toEqual(whole.fed.get(greenFood))
        // A square without a tick is a portion in the bag.
        if (told) expect(whole.lots.get(blueClip)?.left).toBe(40 - second)
        // No square comes or goes by telling of it.
        expect(squares(parts)).toEqual(squares(whole))
        expect(squares(parts).all).toBe(40)
      },
    ),
    { numRuns: 30 },
  )
  expect(hard).toBeGreaterThan(8)
})

test('a label bears at most 120 squares in tens, and its numbers go on where the one before ended', () => {
  expect(drawnSquares({ all: 60, given: 0, other: 0 })).toEqual({ first: 1, last: 60, out: 0, later: 0 })
  expect(drawnSquares({ all: 60, given: 12, other: 2 })).toEqual({ first: 11, last: 60, out: 14, later: 0 })
  expect(drawnSquares({ all: 200, given: 0, other: 0 })).toEqual({ first: 1, last: 120, out: 0, later: 80 })
  expect(drawnSquares({ all: 200, given: 117, other: 0 })).toEqual({ first: 111, last: 200, out: 117, later: 0 })
  expect(drawnSquares({ all: 10, given: 10, other: 0 })).toEqual({ first: 1, last: 10, out: 10, later: 0 })
})
