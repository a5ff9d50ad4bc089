/** The coming nights, week by week: a square for the first food, a ring for the second, both where they meet. */
import './nightMarks.css'
import { addDays, type Day } from '../../../core/index.ts'
import { dayOfMonth, weekday } from '../../words/dates.ts'

type NightMarksProps = {
  readonly tonight: Day
  readonly nights: number
  readonly foods: readonly { readonly name: string; readonly nights: ReadonlySet<Day> }[]
}

const cell = 22
const week = 7

/** The words above say the same; the drawing is for the eye alone. */
export const NightMarks = ({ tonight, nights, foods }: NightMarksProps) => {
  const days = Array.from({ length: nights }, (_, ahead) => addDays(tonight, ahead))
  const rows = Math.ceil(nights / week)
  return (
    <figure className="night-marks">
      <svg viewBox={`0 0 ${week * cell} ${(rows + 1) * cell - 6}`} aria-hidden="true">
        {days.slice(0, week).map((day, column) => (
          <text className="night-marks-head" key={day} x={column * cell + cell / 2} y="11">
            {weekday(day).slice(0, 2)}
          </text>
        ))}
        {days.map((day, at) => {
          const x = (at % week) * cell + cell / 2
          const y = Math.floor(at / week) * cell + cell + 4
          return (
            <g key={day}>
              {foods[0]?.nights.has(day) && <path className="night-marks-first" d={`M${x - 3} ${y - 3}h6v6h-6z`} />}
              {foods.slice(1).some((food) => food.nights.has(day)) && (
                <circle className="night-marks-other" cx={x} cy={y} r="7" />
              )}
              {foods.every((food) => !food.nights.has(day)) && (
                <circle className="night-marks-none" cx={x} cy={y} r="0.9" />
              )}
            </g>
          )
        })}
      </svg>
      <figcaption>
        From {dayOfMonth(tonight)}: a square is {foods[0]?.name}, a ring{' '}
        {foods
          .slice(1)
          .map(({ name }) => name)
          .join(' or ')}
        .
      </figcaption>
    </figure>
  )
}
