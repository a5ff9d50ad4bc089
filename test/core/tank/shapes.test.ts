/**
 * Floors of hexagon and bow front, held against strips summed up in the test: a way of reckoning that shares no formula with
 * the code. The points inside the glass are found by their distance to the panes, not by shorter sides.
 */
import { expect, test } from 'vitest'
import { type ExactWater, exactLitres, floorOf, type TankShape } from '../../../core/index.ts'

/** Litres one centimetre deep over a floor given as how far each strip reaches, front to back. */
const strips = 200_000
const summed = (from: number, to: number, reach: (x: number) => number): number => {
  const wide = (to - from) / strips
  let sum = 0
  for (let strip = 0; strip < strips; strip += 1) sum += Math.max(0, reach(from + (strip + 0.5) * wide)) * wide
  return sum
}

/** Six panes, each `apothem` from the middle; a strip reaches to the nearest of those above and below. */
const hexagonReach =
  (side: number, glass = 0) =>
  (x: number): number => {
    const apothem = (side * Math.sqrt(3)) / 2 - glass
    const slanting = (apothem - Math.abs(x) * Math.cos(Math.PI / 6)) / Math.sin(Math.PI / 6)
    return 2 * Math.min(apothem, slanting)
  }

/** From the back pane at 0 to the circle through both front corners and the tip of the bow. */
const bowReach =
  ({ length, width, bow }: { length: number; width: number; bow: number }, glass = 0) =>
  (x: number): number => {
    const behind = (length * length) / (8 * bow) - bow / 2
    const around = behind + bow - glass
    return width - behind + Math.sqrt(Math.max(0, around * around - x * x)) - glass
  }

const litresOf = (shape: TankShape, glass?: number): number => {
  const measures: ExactWater['measures'] =
    glass === undefined
      ? { taken: 'inside', waterline: 10 }
      : { taken: 'outside', height: 13.2, glass, base: 12, down: 2 }
  return exactLitres({ shape, measures, solids: { by: 'share', share: 0 } }) ?? Number.NaN
}

test.each([1, 28.5, 60, 240])('a hexagon of sides of %s cm', (side) => {
  const shape = { form: 'hexagon', side } as const
  expect(floorOf(shape)).toBeCloseTo(summed(-side, side, hexagonReach(side)), 4)
})

test.each([
  { length: 120, width: 45, bow: 10 },
  { length: 120, width: 45, bow: 0.01 },
  { length: 92.5, width: 30, bow: 46.25 },
  { length: 60, width: 60, bow: 22 },
])('a bow front of %o', (measures) => {
  const shape = { form: 'bowFront', ...measures } as const
  expect(floorOf(shape)).toBeCloseTo(summed(-measures.length / 2, measures.length / 2, bowReach(measures)), 2)
})

test('half a circle before a rectangle is the deepest bow', () => {
  const floor = floorOf({ form: 'bowFront', length: 80, width: 40, bow: 40 })
  expect(floor).toBeCloseTo(80 * 40 + (Math.PI * 40 ** 2) / 2, 8)
})

test('measured outside, the glass is taken off all round: 12 mm of a hexagon', () => {
  const side = 60
  expect(litresOf({ form: 'hexagon', side }, 12)).toBeCloseTo(summed(-side, side, hexagonReach(side, 1.2)) / 100, 6)
})

test('measured outside, bent glass is as thick as the straight: 10 mm of a bow front', () => {
  const measures = { length: 120, width: 45, bow: 10 }
  const inside = summed(-59, 59, bowReach(measures, 1)) / 100
  expect(litresOf({ form: 'bowFront', ...measures }, 10)).toBeCloseTo(inside, 4)
})

test('half a circle of glass keeps its middle', () => {
  const inside = (78 * 39 + (Math.PI * 39 ** 2) / 2) / 100
  expect(litresOf({ form: 'bowFront', length: 80, width: 40, bow: 40 }, 10)).toBeCloseTo(inside, 8)
})
