/** What the drawings of animals are made with: a grid of 96, seen from above with the head up, or from the side with it left. */

export type Drawing = {
  /** Outlines. */
  readonly line: string
  /** Seams, hairs and feelers. */
  readonly fine?: string
  /** Small dark spots: eyes, tips. Never an area that shines at night. */
  readonly dark?: string
}

const middle = 48
/** To a tenth: finer is only longer. */
const tenth = (value: number): number => Math.round(value * 10) / 10
export const at = (x: number, y: number): string => `${tenth(x)} ${tenth(y)}`

/** The same stroke on either side of the middle: `x` counts from there outwards. */
export const both = (stroke: (x: (out: number) => number) => string): string =>
  stroke((out) => tenth(middle + out)) + stroke((out) => tenth(middle - out))

export const dot = (x: number, y: number, r: number): string =>
  `M${at(x - r, y)}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`
export const oval = (x: number, y: number, across: number, down: number, tilt = 0): string => {
  const turn = (tilt * Math.PI) / 180
  const [dx, dy] = [across * Math.cos(turn), across * Math.sin(turn)]
  const arc = `A${across} ${down} ${tilt} 1 0`
  return `M${at(x - dx, y - dy)}${arc} ${at(x + dx, y + dy)}${arc} ${at(x - dx, y - dy)}Z`
}
export const path = (...points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], n) => `${n ? 'L' : 'M'}${at(x, y)}`).join('')

/** A point so far from a centre, in degrees clockwise from the right. */
export const around = (x: number, y: number, far: number, degrees: number): readonly [number, number] => {
  const turn = (degrees * Math.PI) / 180
  return [x + far * Math.cos(turn), y + far * Math.sin(turn)]
}

/** Plates one behind the other, as on a woodlouse’s back: each row how far down and how wide; each edge sags in the middle. */
export const plates = (rows: readonly (readonly [down: number, half: number])[], sag: number, flare = 0.9): string =>
  rows
    .slice(1)
    .map(([down, half], n) => {
      const [top, wide] = rows[n] ?? [0, 0]
      const out = half + flare
      return (
        `M${at(middle - wide, top)}L${at(middle - out, down)}Q${at(middle, down + sag)} ${at(middle + out, down)}` +
        `L${at(middle + wide, top)}`
      )
    })
    .join('')

/** A thin limb or body part with round ends, from here to there. */
export const rod = (from: readonly [number, number], to: readonly [number, number], half: number): string => {
  const [x, y] = from
  const [u, v] = to
  const long = Math.hypot(u - x, v - y)
  const [nx, ny] = [((v - y) / long) * half, ((x - u) / long) * half]
  const end = `A${half} ${half} 0 0 1`
  return `M${at(x + nx, y + ny)}L${at(u + nx, v + ny)}${end} ${at(u - nx, v - ny)}L${at(x - nx, y - ny)}${end} ${at(x + nx, y + ny)}Z`
}

/** Short hairs standing off an arc around a centre. */
export const fringe = (
  [x, y]: readonly [number, number],
  [from, to]: readonly [number, number],
  [near, far]: readonly [number, number],
  hairs: number,
): string =>
  Array.from({ length: hairs }, (_, n) => from + ((to - from) * n) / (hairs - 1))
    .map((turn) => path(around(x, y, near, turn), around(x, y, far, turn)))
    .join('')
