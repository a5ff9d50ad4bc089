/** A label from a file may say anything a label can say, and Tonight is drawn all the same. Our own limits, no source. */
import { expect, test } from 'vitest'
import { doseBand, microlitres } from '../../../core/index.ts'
import { mL, usGal } from '../../support/givenLab.ts'

const bandFor = (low: number, high: number) =>
  doseBand(usGal(200), { low: microlitres(low), high: microlitres(high), per: usGal(1e-300) }, mL(0.05))

test('a label for next to no water stands still at a number', () => {
  expect(bandFor(1000, 2000)).toEqual({ low: 1e9, high: 2e9, shown: { low: 1e9, high: 2e9 } })
  expect(bandFor(0, 1_000_000_000)).toMatchObject({ low: 0, high: 1e15, shown: { low: 0 } })
})
