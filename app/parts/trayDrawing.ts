/** The strokes of a tray: its wells, its rim and, where it was cut through, the two edges with the gap between them. */

const pitch = 10
export const rim = 4
/** Between two pieces of a cut tray. */
export const gap = 6

/** A hand's unevenness, the same at every drawing: up to a quarter of a unit either way. */
const waver = (well: number, axis: number): number => (((well * 37 + axis * 61 + 11) % 17) / 16 - 0.5) / 2

export type Shape = { readonly rows: number; readonly columns: number; readonly cuts: readonly number[] }
type Point = { readonly x: number; readonly y: number }

export const widthOf = ({ columns, cuts }: Shape): number => columns * pitch + cuts.length * gap + 2 * rim
export const heightOf = ({ rows }: Shape): number => rows * pitch + 2 * rim

export const wellAt = (well: number, { columns, cuts }: Shape): Point => {
  const column = well % columns
  const gaps = cuts.filter((cut) => cut <= column).length
  return {
    x: rim + column * pitch + gaps * gap + pitch / 2 + waver(well, 0),
    y: rim + Math.floor(well / columns) * pitch + pitch / 2 + waver(well, 1),
  }
}

/** Whole numbers of columns inside the tray, each once, from the left. */
export const cutsOf = (cuts: readonly number[], columns: number): readonly number[] =>
  [...new Set(cuts)].filter((cut) => cut > 0 && cut < columns).sort((one, other) => one - other)

// One path for all wells of a sort: a slow phone feels every element of a drawing.
const square = ({ x, y }: Point, half: number, round: number): string => {
  const side = 2 * (half - round)
  const corner = (across: number, down: number) =>
    across === down
      ? `q${across * round} 0 ${across * round} ${down * round}`
      : `q0 ${down * round} ${across * round} ${down * round}`
  return `M${x - half + round} ${y - half}h${side}${corner(1, 1)}v${side}${corner(-1, 1)}h${-side}${corner(-1, -1)}v${-side}${corner(1, -1)}z`
}
export const fullWell = (well: Point): string => square(well, 3.2, 1.5)
export const ring = (well: Point): string => square(well, 4.6, 2.6)
export const glint = ({ x, y }: Point): string => `M${x - 1.7} ${y + 0.2}v-1.3q0-.8.8-.8h1`
export const emptyWell = ({ x, y }: Point): string => `M${x - 2.1} ${y}a2.1 2.1 0 1 0 4.2 0a2.1 2.1 0 1 0-4.2 0z`

/** The rim of every piece, `inset` inside its edge. Outer corners are round; a cut goes straight through the inner rim. */
export const rims = (shape: Shape, inset: number): string => {
  const ends = [0, ...shape.cuts, shape.columns]
  const pieces = ends.slice(1).map((end, piece): string => {
    const start = ends[piece] ?? 0
    const first = start === 0
    const last = end === shape.columns
    const left = start * pitch + piece * gap + (first ? 0 : rim)
    const right = end * pitch + piece * gap + rim + (last ? rim : 0)
    return outline({ left: left + (first ? inset : 0), right: right - (last ? inset : 0), first, last }, shape, inset)
  })
  return pieces.join('')
}

type Piece = { readonly left: number; readonly right: number; readonly first: boolean; readonly last: boolean }

const outline = ({ left, right, first, last }: Piece, shape: Shape, inset: number): string => {
  const round = 4 - inset * 0.8
  const top = inset
  const foot = heightOf(shape) - inset
  const tall = foot - top - 2 * round
  // Open at a cut where it is the inner rim: the knife left no lip there.
  const cut = inset === 0 ? 'L' : 'M'
  const leftSide = first
    ? `M${left + round} ${foot}q${-round} 0 ${-round} ${-round}v${-tall}q0 ${-round} ${round} ${-round}`
    : `M${left} ${foot}${cut}${left} ${top}`
  const rightSide = last
    ? `H${right - round}q${round} 0 ${round} ${round}v${tall}q0 ${round} ${-round} ${round}`
    : `H${right}${cut}${right} ${foot}`
  return `${leftSide}${rightSide}H${left + (first ? round : 0)}`
}
