/** A day along a line, by thumb or by arrow keys; said in words, for ears too. */
import { useId } from 'react'
import { addDays, type Day, daysBetween } from '../../../../core/index.ts'
import { dayWords } from '../../../words/dates.ts'
import { sliderDay } from '../../../words/worth.ts'

type DaySliderProps = {
  readonly label: string
  readonly today: Day
  /** How many days beyond today the line has, 1 or more. */
  readonly days: number
  readonly day: Day
  readonly onDay: (day: Day) => void
}

export const DaySlider = ({ label, today, days, day, onDay }: DaySliderProps) => {
  const id = useId()
  const says = sliderDay(day, today)
  return (
    <div className="day-slider">
      <label className="day-slider-label" htmlFor={id}>
        {label}
      </label>
      {/* The slider itself says it to ears. */}
      <p className="day-slider-day" aria-hidden="true">
        {says}
      </p>
      <input
        id={id}
        className="day-slider-line"
        type="range"
        min={0}
        max={days}
        step={1}
        value={daysBetween(today, day)}
        aria-valuetext={says}
        onChange={(event) => onDay(addDays(today, Number(event.target.value)))}
      />
      <p className="day-slider-ends" aria-hidden="true">
        <span>today</span>
        <span>{dayWords(addDays(today, days), today)}</span>
      </p>
    </div>
  )
}
