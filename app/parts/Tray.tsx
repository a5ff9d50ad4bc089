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
        {Array.from({ length: rows * columns }, (_, well) => (
          <Well
            // biome-ignore lint/suspicious/noArrayIndexKey: a well is its place in the tray
            key={well}
            x={rim + (well % columns) * pitch + pitch / 2 + waver(well, 0)}
            y={rim + Math.floor(well / columns) * pitch + pitch / 2 + waver(well, 1)}
            full={well < filled}
            next={next && well === filled - 1}
          />
        ))}
      </svg>
      {caption && <figcaption className="tray-caption">{caption}</figcaption>}
    </figure>
  )
}

type WellProps = { readonly x: number; readonly y: number; readonly full: boolean; readonly next: boolean }

const Well = ({ x, y, full, next }: WellProps) =>
  full ? (
    <g data-well="full">
      <rect className="tray-full" x={x - 3.2} y={y - 3.2} width="6.4" height="6.4" rx="1.5" />
      <path className="tray-glint" d={`M${x - 1.7} ${y + 0.2}v-1.3q0-.8.8-.8h1`} />
      {next && <rect className="tray-next" x={x - 4.6} y={y - 4.6} width="9.2" height="9.2" rx="2.6" />}
    </g>
  ) : (
    <circle data-well="empty" className="tray-empty" cx={x} cy={y} r="2.1" />
  )
