/** One little square a portion, ten in a row, a number at the end of each row so that nobody counts them. */
import { type SquaresDrawn, squaresInRow } from '../../../../core/index.ts'
import { squaresWords } from '../../../words/paper.ts'

const side = 10
const step = 12
/** Room for a number of four figures. */
const numbers = 26

export const Squares = ({ drawn }: { readonly drawn: SquaresDrawn }) => {
  const { first, last, out } = drawn
  const all = Array.from({ length: last - first + 1 }, (_, at) => at)
  const rows = Math.ceil(all.length / squaresInRow)
  return (
    <svg
      className="label-squares"
      viewBox={`-1 -1 ${squaresInRow * step + numbers} ${rows * step}`}
      role="img"
      aria-label={squaresWords(drawn)}
    >
      {all.map((at) => {
        const [x, y] = [(at % squaresInRow) * step, Math.floor(at / squaresInRow) * step]
        const ticked = first + at <= out
        return (
          <path
            key={at}
            d={`M${x} ${y}h${side}v${side}h-${side}z${ticked ? `M${x} ${y + side}l${side}-${side}` : ''}`}
          />
        )
      })}
      {Array.from({ length: rows }, (_, row) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
        <text key={row} x={squaresInRow * step + 1} y={row * step + 8}>
          {Math.min(last, first - 1 + (row + 1) * squaresInRow)}
        </text>
      ))}
    </svg>
  )
}
