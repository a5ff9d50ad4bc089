/** The weeks after a pour: what is counted, what it says, and whether to pour again. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  answerKey,
  beginKey,
  type CountAsked,
  countSeries,
  countTrend,
  type Fact,
  keyPlace,
  kindsSeen,
  type Moment,
  podEaters,
  poursOf,
  recordCount,
  recordKind,
  recordPour,
  reseedNow,
  sinceThePour,
  strikeOut,
  torchHour,
  type World,
} from '../../../core/index.ts'
import { at, type Book, done, given, refusalOf } from '../../support/given.ts'
import { cockle, dose, lab, longGallery, onHand, planOf } from '../../support/givenLab.ts'

const pour = (when: string) => (world: World) =>
  recordPour(
    world,
    { tank: longGallery, poured: at(when), animals: ['copepods'], pours: [{ into: 'sump', bottles: 3 }] },
    at(when),
  )
const jarOf = (counts: readonly number[]): Omit<CountAsked, 'at'> => ({
  tank: longGallery,
  looked: { how: 'jar', litres: 2, rinsedInto: 50, lookedAt: 1 },
  counts,
  where: 'sump',
})
const torchOf = (counts: readonly number[], where = 'back wall'): Omit<CountAsked, 'at'> => ({
  tank: longGallery,
  looked: { how: 'torch', seconds: 60, frame: 100 },
  counts,
  where,
})
const count = (asked: Omit<CountAsked, 'at'>, when: string) => (world: World) =>
  recordCount(world, { ...asked, at: at(when) }, at(when))
const only = (world: World) => {
  const [series] = countSeries(world, longGallery)
  if (!series) throw new Error('no counts')
  return series
}
const tank = (): Book => given(lab)

describe('a jar of two litres, rinsed to 50 mL, with 4, 6 and 5 in a millilitre', () => {
  const book = tank()
  book.does(count(jarOf([4, 6, 5]), '2026-11-02 11:00'))
  test('is about 125 a litre, between 70 and 206', () => {
    const { last, per } = only(book.world())
    expect(per).toBe('litre')
    if (last.density.is !== 'about') throw new Error('none seen')
    expect(last.density.per).toBeCloseTo(125, 9)
    expect(Math.round(last.density.range.low)).toBe(70)
    expect(Math.round(last.density.range.high)).toBe(206)
    expect(last.fact.counts).toEqual([4, 6, 5])
  })
  test('with 5, 6 and 7 a fortnight later shows no clear change', () => {
    book.does(count(jarOf([5, 6, 7]), '2026-11-16 11:00'))
    expect(only(book.world()).previous).toMatchObject({ is: 'compared', says: { is: 'noClearChange' } })
  })
  test('crossed out, it is counted no more', () => {
    const second = only(book.world()).last.entry
    book.does((world) => strikeOut(world, { target: second }, at('2026-11-16 12:00')))
    expect(only(book.world()).points).toHaveLength(1)
    expect(only(book.world()).previous).toBeUndefined()
  })
})

describe('the same jar, with what the sieve keeps known', () => {
  const kept = (share: number, counts: readonly number[] = [4, 6, 5]): Omit<CountAsked, 'at'> => ({
    ...jarOf(counts),
    looked: { how: 'jar', litres: 2, rinsedInto: 50, lookedAt: 1, kept: share },
  })
  test('is more by that share, and no least figure: 125 / 0.8', () => {
    const book = tank()
    book.does(count(kept(0.8), '2026-11-02 11:00'))
    const { last, least } = only(book.world())
    expect(least).toBe(false)
    expect(last.density.is === 'about' && last.density.per).toBeCloseTo(156.25, 9)
  })
  test('is not set beside one whose sieve nobody knows', () => {
    const book = tank()
    book.does(count(jarOf([4, 6, 5]), '2026-11-02 11:00'))
    book.does(count(kept(0.8), '2026-11-16 11:00'))
    const series = countSeries(book.world(), longGallery)
    expect(series.map(({ least, previous }) => ({ least, previous }))).toEqual([
      { least: false, previous: undefined },
      { least: true, previous: undefined },
    ])
    book.does(count(kept(0.4, [2, 3, 2]), '2026-11-30 11:00'))
    expect(only(book.world()).previous).toMatchObject({ is: 'compared', says: { is: 'noClearChange' } })
  })
  test('is refused with no share, or more than all', () => {
    for (const share of [0, -0.2, 1.01])
      expect(refusalOf(count(kept(share), '2026-11-02 11:00')(tank().world()))).toMatchObject({
        why: 'lookOutOfRange',
        of: 'kept',
        most: 1,
      })
  })
})

test('none seen is fewer than so many, and never none', () => {
  const book = tank()
  book.does(count(jarOf([0, 0, 0]), '2026-11-02 11:00'))
  const { density } = only(book.world()).last
  expect(density).toMatchObject({ is: 'noneSeen' })
  expect(density.is === 'noneSeen' && density.fewerThan).toBeCloseTo(3.689 / 0.12, 2)
})

describe('counts by torch', () => {
  test('know how long it has been dark, by the lamp', () => {
    // Lights out at nine.
    const [fact] = done(count(torchOf([14, 9, 31]), '2026-11-02 22:15')(tank().world()))
    expect(fact.looked).toMatchObject({ minutesDark: 75 })
    expect(fact.night).toBe('2026-11-02')
    const [late] = done(count(torchOf([14, 9, 31]), '2026-11-03 00:40')(tank().world()))
    expect(late.looked).toMatchObject({ minutesDark: 220 })
    expect(late.night).toBe('2026-11-02')
    expect([59, 60, 120, 121, undefined].map((minutes) => torchHour(minutes))).toEqual([
      'otherHour',
      'inTheHour',
      'inTheHour',
      'otherHour',
      'notKnown',
    ])
  })
  test('of three panes the middle one speaks', () => {
    const book = tank()
    book.does(count(torchOf([14, 9, 31]), '2026-11-02 22:15'))
    expect(only(book.world()).last.torch).toEqual({ median: 14, lowest: 9, highest: 31 })
  })
  test('at another hour of the night are not compared', () => {
    const book = tank()
    book.does(count(torchOf([40, 42, 38]), '2026-11-02 22:15'))
    book.does(count(torchOf([9, 12, 10]), '2026-11-09 21:10'))
    expect(only(book.world()).previous).toMatchObject({ is: 'otherHours' })
    book.does(count(torchOf([9, 12, 10]), '2026-11-16 22:15'))
    const { previous, first } = only(book.world())
    expect(previous).toMatchObject({ is: 'otherHours' })
    expect(first).toMatchObject({ is: 'compared', says: { is: 'fewer' } })
  })
  test('of another spot, another length or another way are other series; how a spot is written is not', () => {
    const book = tank()
    book.does(count(torchOf([9, 12, 10]), '2026-11-02 22:15'))
    book.does(count(torchOf([9, 12, 10], ' Back wall '), '2026-11-03 22:15'))
    book.does(count(torchOf([9, 12, 10], 'left pane'), '2026-11-04 22:15'))
    book.does(count({ ...torchOf([9, 12, 10]), looked: { how: 'torch', seconds: 30, frame: 100 } }, '2026-11-05 22:15'))
    book.does(count(jarOf([1]), '2026-11-06 10:00'))
    expect(countSeries(book.world(), longGallery).map(({ how, points }) => [how, points.length])).toEqual([
      ['jar', 1],
      ['torch', 1],
      ['torch', 1],
      ['torch', 2],
    ])
    expect(countSeries(book.world(), cockle)).toEqual([])
  })
})

describe('what is no count is refused', () => {
  const now = at('2026-11-02 22:15')
  const why = (asked: Omit<CountAsked, 'at'>, when: Moment = now) =>
    refusalOf(recordCount(tank().world(), { ...asked, at: when }, now)).why
  test('half an animal, fewer than none, nothing at all', () => {
    expect(why(jarOf([4.5]))).toBe('countNotWhole')
    expect(why(jarOf([-1]))).toBe('countNegative')
    expect(why(jarOf([]))).toBe('nothingCounted')
  })
  test('measures that are not above nothing, and more looked at than there was', () => {
    const jar = (more: object) => ({
      ...jarOf([4]),
      looked: { how: 'jar', litres: 2, rinsedInto: 50, lookedAt: 1, ...more } as const,
    })
    expect(why(jar({ litres: 0 }))).toBe('lookOutOfRange')
    expect(why(jar({ rinsedInto: -1 }))).toBe('lookOutOfRange')
    expect(why(jar({ lookedAt: Number.NaN }))).toBe('lookOutOfRange')
    expect(why({ ...torchOf([1]), looked: { how: 'torch', seconds: 60, frame: Number.POSITIVE_INFINITY } })).toBe(
      'lookOutOfRange',
    )
    expect(why({ ...jar({ lookedAt: 30 }), counts: [3, 3] })).toBe('lookedAtMoreThanRinsed')
  })
  test('a count still to come, of a tank not on record, or at a spot nobody could read', () => {
    expect(why(jarOf([4]), at('2026-11-03 09:00'))).toBe('notYet')
    expect(why({ ...jarOf([4]), tank: cockle })).toBe('noSuchTank')
    expect(why({ ...jarOf([4]), where: 'x'.repeat(101) })).toBe('wordsTooLong')
  })
})

describe('since the pour', () => {
  const story = (): Book => {
    const book = given(
      lab,
      onHand({ portions: 90, each: 1, frozen: '2026-07-20' }),
      planOf({ first: '2026-08-20', amount: 1 }),
    )
    book.does(pour('2026-08-25 21:50'))
    book.does(dose(at('2026-08-26 21:20')))
    book.does(dose(at('2026-08-28 21:20')))
    return book
  }
  test('days, feedings and kinds are told together; a dose before the pour is none of them', () => {
    const book = story()
    const walk = done(answerKey(beginKey(), { question: 'where', answer: 'elsewhere' }))
    const clam = done(answerKey(walk, { question: 'shell', answer: 'clamShell' }))
    expect(keyPlace(clam)).toMatchObject({ at: 'found', found: 'ostracod' })
    const see = (when: string) =>
      book.does((world) => recordKind(world, { tank: longGallery, at: at(when), walk: clam, where: 'sand' }, at(when)))
    see('2026-09-01 22:00')
    see('2026-09-08 22:00')
    expect(sinceThePour(book.world(), longGallery, at('2026-11-25 12:00'))).toMatchObject({
      days: 92,
      feedings: 2,
      kinds: 1,
    })
    expect(kindsSeen(book.world(), longGallery)).toMatchObject([{ form: 'ostracod', times: 2 }])
    expect(sinceThePour(book.world(), cockle, at('2026-11-25 12:00'))).toBeUndefined()
  })
  test('a walk that is still asking is not kept; one that stays unsure is, and is no kind', () => {
    const book = tank()
    const now = at('2026-09-01 22:00')
    const asked = { tank: longGallery, at: now }
    expect(refusalOf(recordKind(book.world(), { ...asked, walk: beginKey() }, now)).why).toBe('keyNotDone')
    const onFish = done(answerKey(beginKey(), { question: 'where', answer: 'onFish' }))
    const unsure = done(answerKey(onFish, { question: 'onFish', answer: 'cannotTell' }))
    book.does((world) => recordKind(world, { ...asked, walk: unsure }, now))
    expect(book.world().watched.get(longGallery)?.seen[0]?.fact).toMatchObject({ says: 'unsure', marks: ['ridesFish'] })
    expect(kindsSeen(book.world(), longGallery)).toEqual([])
  })
  test('a pour of a planned night counts as one pour, whatever places it went to', () => {
    const book = tank()
    const off = at('2026-08-25 21:40')
    const facts: readonly Fact[] = [
      {
        kind: 'seedingPlanned',
        at: at('2026-08-25 18:00'),
        run: 'run1' as never,
        tank: longGallery,
        night: '2026-08-25' as never,
        animals: ['copepods'],
        pours: [{ into: 'sump', bottles: 1 }],
        holds: 473_000 as never,
        waterOut: 'after',
        steps: [],
        off,
        morning: at('2026-08-26 07:30'),
      },
      ...(['sump', 'display'] as const).map(
        (into): Fact => ({
          kind: 'seedingPoured',
          at: at('2026-08-25 21:50'),
          run: 'run1' as never,
          into,
          bottles: 1.5,
          amount: 700_000 as never,
          rinse: 0 as never,
        }),
      ),
    ]
    book.note(...facts)
    expect(poursOf(book.world(), longGallery, at('2026-09-01 12:00'))).toMatchObject([
      {
        night: '2026-08-25',
        pours: [
          { into: 'sump', bottles: 1.5 },
          { into: 'display', bottles: 1.5 },
        ],
      },
    ])
    expect(poursOf(book.world(), cockle, at('2026-09-01 12:00'))).toEqual([])
  })
})

describe('then what', () => {
  const counted = (book: Book, ...nights: readonly (readonly [string, readonly number[]])[]): Book => {
    for (const [night, counts] of nights) book.does(count(torchOf(counts), `${night} 22:15`))
    return book
  }
  const poured = (): Book => {
    const book = tank()
    book.does(pour('2026-08-25 21:50'))
    return book
  }
  const falling = [
    ['2026-10-01', [40, 44, 38]],
    ['2026-10-15', [25, 22, 27]],
    ['2026-10-29', [9, 12, 8]],
  ] as const
  const steady = [
    ['2026-10-01', [40, 44, 38]],
    ['2026-10-15', [36, 41, 39]],
    ['2026-10-29', [44, 39, 42]],
  ] as const
  const later = at('2026-11-02 12:00')

  test('three counts that clearly fall are a reason to pour again, with as many bottles as at first', () => {
    const { is, reasons, bottles } = reseedNow(counted(poured(), ...falling).world(), longGallery, later)
    expect(is).toBe('reasonsFor')
    expect(reasons.map(({ why }) => why)).toEqual(['falling'])
    expect(bottles).toBe(5)
  })
  test('three counts that fall no more than chance are none', () => {
    const close = [
      ['2026-10-01', [10, 12, 11]],
      ['2026-10-15', [9, 11, 10]],
      ['2026-10-29', [9, 9, 9]],
    ] as const
    expect(reseedNow(counted(poured(), ...close).world(), longGallery, later)).toMatchObject({ is: 'noReason' })
  })
  test('fish that came since the pour are one; the same fish before it are not', () => {
    const hunters = (when: string): Fact => ({ kind: 'podHuntersNoted', at: at(when), tank: longGallery, there: true })
    const came = poured()
    came.note(hunters('2026-10-20 12:00'))
    expect(reseedNow(came.world(), longGallery, later).reasons.map(({ why }) => why)).toEqual(['podHunters'])
    expect(reseedNow(came.world(), longGallery, later).bottles).toBe(10)
    const before = tank()
    before.note(hunters('2026-08-01 12:00'))
    before.does(pour('2026-08-25 21:50'))
    expect(reseedNow(before.world(), longGallery, later).is).toBe('noReason')
  })
  test('in the second to fourth week after a first pour a second is usual', () => {
    const day = (text: string) => reseedNow(poured().world(), longGallery, at(`${text} 12:00`)).is
    expect(['2026-09-07', '2026-09-08', '2026-09-22', '2026-09-23'].map(day)).toEqual([
      'noReason',
      'reasonsFor',
      'reasonsFor',
      'noReason',
    ])
  })
  test('the fish that eats pods waits four weeks, then for three counts that hold', () => {
    const asked = (book: Book, when = later) => podEaters(book.world(), longGallery, when)
    expect(asked(tank())).toMatchObject({ is: 'nothingPoured' })
    expect(asked(poured(), at('2026-09-21 12:00'))).toMatchObject({
      is: 'tooSoon',
      from: '2026-09-22',
      to: '2026-10-20',
    })
    expect(asked(poured(), at('2026-09-22 12:00'))).toMatchObject({ is: 'countFirst', missing: 3 })
    expect(asked(counted(poured(), ...falling))).toMatchObject({ is: 'falling' })
    expect(asked(counted(poured(), ...steady))).toMatchObject({ is: 'mayCome', to: undefined })
  })
  test('counts from before a later pour do not speak for the time after it', () => {
    const book = counted(poured(), ...steady)
    book.does(pour('2026-10-30 21:50'))
    expect(podEaters(book.world(), longGallery, at('2026-12-05 12:00'))).toMatchObject({ is: 'countFirst', missing: 3 })
  })
})

test('the same counts again are never more and never fewer, whatever they are', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(400), { minLength: 1, maxLength: 6 }), (counts) => {
      const book = tank()
      for (const night of ['01', '08', '15']) book.does(count(torchOf(counts), `2026-11-${night} 22:15`))
      const series = only(book.world())
      expect(series.last.fact.counts).toEqual(counts)
      expect(series.previous).toMatchObject({ is: 'compared', says: { is: 'noClearChange' } })
      expect(series.first).toMatchObject({ is: 'compared', says: { is: 'noClearChange' } })
      expect(countTrend(series).is).toBe('steady')
    }),
    { numRuns: 60 },
  )
})
