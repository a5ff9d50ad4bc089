import fc from 'fast-check'
import { expect, test } from 'vitest'
import { isStamp, latestStamp, moment, nextStamp, type Stamp, writtenAt, writtenBy } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { device, noonOn, stamp } from '../../fixtures/notes.ts'

const kitchen = device('kitchen')
const pocket = device('pocket')
const noon = noonOn('2026-03-01')
const minutes = (count: number) => count * 60_000

test('a stamp tells when and by which phone an entry was written', () => {
  const first = nextStamp(undefined, noon, kitchen)
  expect(first).toBe('001772366400000-000-kitchen')
  expect([writtenAt(first), writtenBy(first)]).toEqual([noon, 'kitchen'])
})

test('stamps sort by the moment, then the tick, then the phone', () => {
  const early = nextStamp(undefined, noon, pocket)
  const sameMoment = nextStamp(early, noon, kitchen)
  const later = nextStamp(sameMoment, moment(noon + 1), kitchen)
  const inAnotherCentury = nextStamp(undefined, moment(999), pocket)
  expect([later, sameMoment, early, inAnotherCentury].sort()).toEqual([inAnotherCentury, early, sameMoment, later])
})

test('the 36th entry of a millisecond sorts after the ninth and the tenth', () => {
  const burst: Stamp[] = []
  for (let i = 0; i < 40; i += 1) burst.push(nextStamp(burst.at(-1), noon, kitchen))
  expect([...burst].sort()).toEqual(burst)
  expect(burst[36]?.slice(16, 19)).toBe('010')
})

test('a burst of fifty thousand in one millisecond has fifty thousand stamps, the ticks running over into the next', () => {
  const burst: Stamp[] = []
  for (let i = 0; i < 50_000; i += 1) burst.push(nextStamp(burst.at(-1), noon, kitchen))
  expect(new Set(burst).size).toBe(50_000)
  expect(burst.every(isStamp)).toBe(true)
  expect(burst.every((each, i) => i === 0 || each > (burst[i - 1] ?? ''))).toBe(true)
  expect(burst[36 ** 3 - 1]).toBe('001772366400000-zzz-kitchen')
  expect(burst[36 ** 3]).toBe('001772366400001-000-kitchen')
})

test('a clock that stepped back a minute goes on after the last entry', () => {
  const last = nextStamp(undefined, noon, kitchen)
  expect(nextStamp(last, moment(noon - minutes(1)), kitchen) > last).toBe(true)
})

test('a phone whose clock is far ahead is not followed', () => {
  const honest = nextStamp(undefined, moment(noon - minutes(5)), kitchen)
  const quick = nextStamp(undefined, moment(noon + minutes(5)), pocket)
  const nextYear = nextStamp(undefined, noonOn('2027-03-01'), pocket)
  expect(latestStamp([quick, honest, nextYear], noon)).toBe(quick)
  expect(latestStamp([nextYear], noon)).toBeUndefined()
  expect(writtenAt(nextStamp(latestStamp([honest, nextYear], noon), noon, kitchen))).toBe(noon)
})

test('an empty ledger has no latest stamp', () => {
  expect(latestStamp([], noon)).toBeUndefined()
})

test('no two entries share a stamp, however the clocks of two phones jump', () => {
  const met = tally('same millisecond', 'clock back', 'clock back by hours')
  const step = fc.record({
    jump: fc.oneof(
      fc.constant(0),
      fc.constant(1),
      fc.integer({ min: -5, max: 5 }),
      fc.constantFrom(-7_200_000, 7_200_000),
    ),
    by: fc.constantFrom(kitchen, pocket),
  })
  holds(
    fc.property(fc.array(step, { minLength: 2, maxLength: 40 }), (steps) => {
      let now = noon
      const minted: Stamp[] = []
      for (const { jump, by } of steps) {
        met.note('same millisecond', jump === 0)
        met.note('clock back', jump < 0)
        met.note('clock back by hours', jump < -3_600_000)
        now = moment(now + jump)
        const latest = latestStamp(minted, now)
        const next = nextStamp(latest, now, by)
        if (latest !== undefined) expect(next > latest).toBe(true)
        minted.push(next)
      }
      expect(new Set(minted).size).toBe(minted.length)
    }),
  )
  met.expectAtLeast(100)
})

test('a text that only resembles a stamp is not one', () => {
  expect(isStamp(stamp('001772366400000-000-kitchen'))).toBe(true)
  const near = ['1772366400000-000-kitchen', '001772366400000-00-kitchen', '001772366400000-000-Kitchen']
  const more = ['001772366400000-000-kit', '001772366400000-000-kitchen\n', '001772366400000_000_kitchen', '']
  expect([...near, ...more].filter(isStamp)).toEqual([])
})
