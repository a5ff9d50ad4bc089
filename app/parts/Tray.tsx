/**
 * A silicone tray as it lies in the freezer: its rows, its columns, where it was cut through, and which wells still hold a
 * portion. A full well is a solid square, an empty one a small ring, so that neither needs its colour.
 */
import '../styles/tray.css'
import { TrayWells } from './TrayWells.tsx'
import { cutsOf, emptyWell, fullWell, glint, heightOf, rims, ring, wellAt, widthOf } from './trayDrawing.ts'

type TrayProps = {
  readonly rows: number
  readonly columns: number
  /** Along the rows; true holds a portion. */
  readonly wells: readonly boolean[]
  /** The columns, counted from 1, after which it was cut through. */
  readonly cuts?: readonly number[]
  /** The well whose turn it is, ringed. */
  readonly next?: number | undefined
  /** The same in words, for those who cannot see it. */
  readonly says: string
  readonly caption?: string | undefined
  readonly size?: 'compact' | 'large'
  /** Makes every well a key. Only a large tray has room for that. */
  readonly onWell?: ((well: number) => void) | undefined
}

export const Tray = ({ rows, columns, wells, cuts = [], next, says, caption, size = 'large', onWell }: TrayProps) => {
  const shape = { rows, columns, cuts: cutsOf(cuts, columns) }
  const places = Array.from({ length: rows * columns }, (_, well) => wellAt(well, shape))
  const full = places.filter((_, well) => wells[well])
  const turn = next === undefined ? undefined : places[next]
  const box = `-1 -1 ${widthOf(shape) + 2} ${heightOf(shape) + 2}`
  const strokes = (
    <>
      <path className="tray-rim" d={rims(shape, 0)} />
      <path className="tray-rim-inner" d={rims(shape, 1.4)} />
      <path className="tray-full" d={full.map(fullWell).join('')} />
      <path className="tray-glint" d={full.map(glint).join('')} />
      <path
        className="tray-empty"
        d={places.flatMap((place, well) => (wells[well] ? [] : emptyWell(place))).join('')}
      />
      {turn && <path className="tray-next" d={ring(turn)} />}
    </>
  )
  return (
    <figure className="tray" data-size={size}>
      {onWell ? (
        <TrayWells shape={shape} wells={wells} next={next} says={says} onWell={onWell}>
          <svg className="tray-under" viewBox={box} aria-hidden="true">
            {strokes}
          </svg>
        </TrayWells>
      ) : (
        <svg className="tray-drawing" viewBox={box} role="img" aria-label={says} preserveAspectRatio="xMinYMid">
          {strokes}
        </svg>
      )}
      {caption && <figcaption className="tray-caption">{caption}</figcaption>}
    </figure>
  )
}
