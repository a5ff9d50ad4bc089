/**
 * Counts as dots with their ranges on a plain line of days; pours and feedings are marked below. Shapes alone, without
 * colour or letters: all of it is said again in the words and the list beside it.
 */
import { type CountPoint, type CountSeries, type Day, dayNumber, earlier, later } from '../../../core/index.ts'
import { dayWords } from '../../words/dates.ts'
import { number } from '../../words/numbers.ts'

type CountChartProps = {
  readonly series: CountSeries
  readonly pours: readonly Day[]
  readonly feedings: readonly Day[]
  readonly today: Day
}

const wide = 320
const tall = 120
const side = 8
const line = tall + 8

const highOf = ({ density }: CountPoint): number => (density.is === 'about' ? density.range.high : density.fewerThan)

export const CountChart = ({ series, pours, feedings, today }: CountChartProps) => {
  const days = [...series.points.map(({ fact }) => fact.night), ...pours].map((day) => dayNumber(day))
  const from = Math.min(...days)
  const to = Math.max(...days, from + 1)
  const top = Math.max(...series.points.map(highOf))
  const x = (day: Day) => side + ((dayNumber(day) - from) / (to - from)) * (wide - 2 * side)
  const y = (value: number) => 6 + (1 - value / top) * (tall - 6)
  const within = (day: Day) => dayNumber(day) >= from && dayNumber(day) <= to
  const fed = [...new Set(feedings)].filter(within)
  const first = series.points[0]?.fact.night ?? today
  const begin = [first, ...pours].reduce((a, b) => earlier(a, b))
  const end = [series.last.fact.night, ...pours].reduce((a, b) => later(a, b))
  return (
    <figure className="life-chart">
      <p className="life-chart-top" aria-hidden="true">
        {number(Math.round(top))}
      </p>
      <svg viewBox={`0 0 ${wide} ${line + 22}`} aria-hidden="true">
        <path className="life-line" d={`M0 ${tall}H${wide}`} />
        {series.points.map((point) => {
          const { density, entry, fact, hours } = point
          const at = x(fact.night)
          const low = y(density.is === 'about' ? density.range.low : 0)
          const high = y(highOf(point))
          return (
            <g key={entry} className="life-point">
              <path d={`M${at} ${low}V${high}M${at - 3} ${low}h6M${at - 3} ${high}h6`} />
              <circle
                cx={at}
                cy={y(density.is === 'about' ? density.per : 0)}
                r="4.5"
                data-open={hours !== undefined && hours !== 'inTheHour' ? '' : undefined}
              />
            </g>
          )
        })}
        <path className="life-feedings" d={fed.map((day) => `M${x(day)} ${line}v5`).join('')} />
        {pours.filter(within).map((day) => (
          <path key={day} className="life-pour" d={`M${x(day) - 5} ${line + 20}h10l-5 -11z`} />
        ))}
      </svg>
      <p className="life-chart-days" aria-hidden="true">
        <span>{dayWords(begin, today)}</span>
        <span>{dayWords(end, today)}</span>
      </p>
      <figcaption>
        Dots are counts, with the range the truth lies in
        {series.how === 'torch' && '; an open dot fell at another hour'}. Short strokes are feedings, triangles pours.
      </figcaption>
    </figure>
  )
}
