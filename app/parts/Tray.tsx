/**
 * A silicone tray as it lies in the freezer: its rows, its columns, and which wells still hold a portion. Wells empty from
 * the end. A full well is a solid square, an empty one a small ring, so that neither needs its colour.
 */
import '../styles/tray.css'

type TrayProps = {
  readonly rows: number
  readonly columns: number
  readonly filled: number
  /** The same in words, for those who cannot see it. */
  readonly says: string
  readonly caption?: string | undefined
  readonly size?: 'compact' | 'large'
  /** Rings the well whose turn it is. */
  readonly next?: boolean
}

const pitch = 10
const rim = 4

/** A hand's unevenness, the same at every drawing: up to a quarter of a unit either way. */
const waver = (well: number, axis: number): number => (((well * 37 + axis * 61 + 11) % 17) / 16 - 0.5) / 2

export const Tray = ({ rows, columns, filled, says, caption, size = 'large', next = false }: TrayProps) => {
  const width = columns * pitch + 2 * rim
  const height = rows * pitch + 2 * rim
  const wells = Array.from({ length: rows * columns }, (_, well) => wellAt(well, columns))
  const holds = Math.min(wells.length, Math.max(0, filled))
  const full = wells.slice(0, holds)
  const turn = next ? full.at(-1) : undefined
  return (
    <figure className="tray" data-size={size}>
      <svg
        className="tray-drawing"
        viewBox={`-1 -1 ${width + 2} ${height + 2}`}
        role="img"
        aria-label={says}
        preserveAspectRatio="xMinYMid"
      >
        <rect className="tray-rim" width={width} height={height} rx="4" />
        <rect className="tray-rim-inner" x="1.4" y="1.4" width={width - 2.8} height={height - 2.8} rx="2.8" />
        <path className="tray-full" d={full.map(fullWell).join('')} />
        <path className="tray-glint" d={full.map(glint).join('')} />
        <path className="tray-empty" d={wells.slice(holds).map(emptyWell).join('')} />
        {turn && <path className="tray-next" d={ring(turn)} />}
      </svg>
      {caption && <figcaption className="tray-caption">{caption}</figcaption>}
    </figure>
  )
}

type Well = { readonly x: number; readonly y: number }

const wellAt = (well: number, columns: number): Well => ({
  x: rim + (well % columns) * pitch + pitch / 2 + waver(well, 0),
  y: rim + Math.floor(well / columns) * pitch + pitch / 2 + waver(well, 1),
})

// One path for all wells of a sort: a slow phone feels every element of a drawing.
const square = ({ x, y }: Well, half: number, round: number): string => {
  const side = 2 * (half - round)
  const corner = (across: number, down: number) =>
    across === down
      ? `q${across * round} 0 ${across * round} ${down * round}`
      : `q0 ${down * round} ${across * round} ${down * round}`
  return `M${x - half + round} ${y - half}h${side}${corner(1, 1)}v${side}${corner(-1, 1)}h${-side}${corner(-1, -1)}v${-side}${corner(1, -1)}z`
}
const fullWell = (well: Well): string => square(well, 3.2, 1.5)
const ring = (well: Well): string => square(well, 4.6, 2.6)
const glint = ({ x, y }: Well): string => `M${x - 1.7} ${y + 0.2}v-1.3q0-.8.8-.8h1`
const emptyWell = ({ x, y }: Well): string => `M${x - 2.1} ${y}a2.1 2.1 0 1 0 4.2 0a2.1 2.1 0 1 0-4.2 0z`
