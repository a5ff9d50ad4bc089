/** Shares by volume and misplaced points. Checked only against our own worked examples, reckoned by hand. */
import { expect, test } from 'vitest'
import { shareByVolume, slipReadings, type TankDescribed, type TankId, tankAt } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import { mL, tankOf, usGal } from '../../support/givenLab.ts'

const now = at('2027-06-10 21:00')
const tanks = (volumes: readonly number[], mark = 0.05): readonly TankDescribed[] => {
  const ids = volumes.map((_, place) => `tank${place}` as TankId)
  const world = given(
    ...volumes.map((gallons, place) => tankOf(ids[place] as TankId, usGal(gallons), { pipetteMark: mL(mark) })),
  ).world()
  return ids.flatMap((id) => tankAt(world, id, now) ?? [])
}
const shares = (total: number, volumes: readonly number[], mark?: number) =>
  shareByVolume(mL(total), tanks(volumes, mark))?.map(({ amount }) => amount)

test('one portion of 1 mL over 130 and 70 US gal is 0.65 and 0.35 mL', () => {
  expect(shares(1, [130, 70])).toEqual([650, 350])
})

test('marks that are left over go to whoever is furthest below its share, and all together never exceed the portion', () => {
  // 0.597, 0.269 and 0.134 mL: 0.55 + 0.25 + 0.10 leaves two marks, for the first and the last.
  expect(shares(1, [200, 90, 45])).toEqual([600, 250, 150])
  // A rest smaller than a mark is given to nobody.
  expect(shares(0.37, [100, 100])).toEqual([200, 150])
})

test('with one tank it is the whole of it in marks, and a coarse pipette shares coarsely', () => {
  expect(shares(1, [60])).toEqual([1000])
  expect(shares(1, [130, 70], 0.2)).toEqual([600, 400])
})

test('a tank whose water is not known has no share', () => {
  const [known] = tanks([60])
  const bare: TankDescribed[] = known ? [known, { ...known, water: { about: false, doseBy: 'stated' } }] : []
  expect(shareByVolume(mL(1), bare)).toBeUndefined()
})

test('1000 mL for a tank whose range ends at 2 mL was meant as 1 or 10', () => {
  expect(slipReadings(mL(1000), 2000)).toEqual([1000, 10_000])
  expect(slipReadings(mL(25), 2000)).toEqual([250, 2500])
})
