/** A label from a file may say anything a label can say, and Tonight is drawn all the same. Our own limits, no source. */
import { expect, test } from 'vitest'
import { bandOf, foodAt, microlitres, tankAt } from '../../../core/index.ts'
import { at, given } from '../../support/given.ts'
import { foodOf, greenFood, longGallery, tankOf, usGal } from '../../support/givenLab.ts'

const now = at('2027-01-06 19:15')
const bandFor = (low: number, high: number, per: number) => {
  const band = { low: microlitres(low), high: microlitres(high), per: usGal(per) }
  const world = given(tankOf(longGallery, usGal(200)), foodOf(greenFood, { band })).world()
  const [tank, food] = [tankAt(world, longGallery, now), foodAt(world, greenFood, now)]
  return tank && food && bandOf(tank, food)
}

test('a label for next to no water stands still at a number', () => {
  expect(bandFor(1000, 2000, 1e-300)).toEqual({ low: 1e9, high: 2e9, shown: { low: 1e9, high: 2e9 } })
  expect(bandFor(0, 1_000_000_000, 1e-300)).toMatchObject({ low: 0, high: 1e15, shown: { low: 0 } })
})
