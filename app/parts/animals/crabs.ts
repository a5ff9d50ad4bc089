/** Crabs, and the two kinds of pincers that tell them apart. */
import { around, both, type Drawing, dot, path } from './pen.ts'

export const crab: Drawing = {
  line:
    'M26 48C26 36 36 32 48 32C60 32 70 36 70 48C70 60 60 68 48 68C36 68 26 60 26 48Z' +
    both((x) => `M${x(17)} 36L${x(27)} 30L${x(29)} 24`) +
    both(
      (x) =>
        `M${x(29)} 25C${x(38)} 24 ${x(40)} 13 ${x(31)} 6C${x(32)} 11 ${x(30)} 14 ${x(27)} 14C${x(23)} 10 ${x(24)} 7 ${x(25)} 5C${x(17)} 11 ${x(20)} 23 ${x(29)} 25Z`,
    ) +
    both((x) => `M${x(6)} 32.6L${x(7)} 27`),
  fine:
    both((x) => `M${x(21.6)} 46L${x(36)} 40L${x(43)} 50`) +
    both((x) => `M${x(21.6)} 52L${x(37)} 52L${x(43)} 64`) +
    both((x) => `M${x(19)} 58L${x(33)} 64L${x(36)} 76`) +
    both((x) => `M${x(15)} 63L${x(24)} 74L${x(24)} 85`) +
    both((x) => `M${x(12)} 40Q${x(7)} 47 ${x(11)} 55M${x(20)} 40L${x(23)} 37M${x(16)} 36.4L${x(18)} 33`),
  dark: both((x) => dot(x(7.2), 25.6, 2)),
}

const hand =
  'M26 92L30 74C16 64 14 44 26 32C36 24 44 20 50 8C60 20 58 34 48 44C54 46 60 42 68 32C74 46 70 60 58 68C56 72 55 76 56 82L54 92'
const spoons =
  'M26 92L30 74C16 64 14 44 24 32C32 24 38 20 42 12Q48 6 55 11Q57 16 53 20C56 30 54 38 48 44C54 46 58 43 62 38Q66 32 73 37Q76 42 71 46C70 56 66 62 58 68C56 72 55 76 56 82L54 92'
const hairs = (from: readonly (readonly [x: number, y: number, turn: number])[]): string =>
  from.map(([x, y, turn]) => path([x, y], around(x, y, 7, turn)) + path([x, y], around(x, y, 6, turn + 22))).join('')

type Point = readonly [x: number, y: number]
/** A tip shaded dark by strokes across it, between its outer edge and its inner: at night a filled tip would shine. */
const hatch = (tip: Point, bend: Point, outer: Point, inside: Point, inner: Point): string =>
  Array.from({ length: 9 }, (_, n) => (n + 1) / 9)
    .map((far) => path(bow(tip, bend, outer, far), bow(tip, inside, inner, far)))
    .join('')
const bow = (from: Point, over: Point, to: Point, far: number): Point => [
  (1 - far) ** 2 * from[0] + 2 * far * (1 - far) * over[0] + far ** 2 * to[0],
  (1 - far) ** 2 * from[1] + 2 * far * (1 - far) * over[1] + far ** 2 * to[1],
]

/** Hairy outside, and its tips are sharp and dark. */
export const hairyPincers: Drawing = {
  line: hand,
  fine:
    hairs([
      [33, 26, 220],
      [26, 32, 210],
      [21, 39, 195],
      [18.4, 47, 185],
      [18.6, 55, 172],
      [21, 63, 160],
      [26, 70, 150],
      [71, 46, -5],
      [69, 54, 10],
      [64.6, 62, 25],
      [58, 69, 40],
      [55.6, 79, 15],
      [29, 78, 170],
      [27.4, 86, 175],
      [34, 44, 205],
      [32, 54, 195],
      [38, 64, 190],
      [48, 56, 30],
      [54, 58, 40],
    ]) +
    hatch([50, 8], [58.6, 20], [55.2, 33.6], [47, 16], [42.4, 21.2]) +
    hatch([68, 32], [72, 42], [69, 54], [63, 39.6], [58.4, 43.4]),
}

/** Smooth, and its tips are blunt like spoons. */
export const smoothPincers: Drawing = {
  line: spoons,
  fine: 'M42 12Q48 17 53 20M62 38Q67 43 71 46M30 74Q44 80 58 68M28 50Q28 60 34 66',
}
