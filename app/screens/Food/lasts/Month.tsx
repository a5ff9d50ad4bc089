/** One month as a small calendar: what each dose night takes from, what is good for the last time, where the food ends. */
import type { MonthPage, Night, Walked } from '../../../../core/index.ts'
import { monthWords, weekday } from '../../../words/dates.ts'
import { type Named, takesWords } from '../../../words/lasts.ts'

type MonthProps = {
  readonly page: MonthPage
  readonly names: ReadonlyMap<Walked, Named>
  readonly tonight: string
  /** The first night on which any tank goes without. */
  readonly bareNight: string
}

const week = 7

export const Month = ({ page, names, tonight, bareNight }: MonthProps) => {
  const { month, before, nights } = page
  const cells: (Night | undefined)[] = [...Array<undefined>(before), ...nights]
  const weeks = Array.from(
    { length: Math.ceil(cells.length / week) },
    (_, at) => Array.from({ length: week }, (_, day) => cells[at * week + day]),
    // Weeks gone by have nothing to say.
  ).filter((days) => days.some((night) => night !== undefined && night.day >= tonight))
  return (
    <table className="month">
      <caption>{monthWords(month)}</caption>
      <thead>
        <tr>
          {nights.slice(week - before, 2 * week - before).map(({ day }) => (
            <th scope="col" key={day}>
              <span aria-hidden="true">{weekday(day).slice(0, 2)}</span>
              <span className="for-ears">{weekday(day)}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {weeks.map((days, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the weeks of a month stand in one order
          <tr key={at}>
            {days.map((night, day) =>
              night ? (
                <td key={night.day} data-tonight={night.day === tonight ? '' : undefined}>
                  <Day night={night} names={names} first={night.day === bareNight} tonight={night.day === tonight} />
                </td>
              ) : (
                // biome-ignore lint/suspicious/noArrayIndexKey: an empty place is its place
                <td key={day} />
              ),
            )}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

type DayProps = {
  readonly night: Night
  readonly names: ReadonlyMap<Walked, Named>
  readonly first: boolean
  readonly tonight: boolean
}

const Day = ({ night, names, first, tonight }: DayProps) => {
  const { day, steps, bare, lastGood } = night
  const from = [...new Set(steps.map((step) => step.from))].flatMap((each) => names.get(each) ?? [])
  const ends = lastGood.flatMap((each) => names.get(each) ?? [])
  return (
    <>
      <span className="month-day" data-bare={bare.length > 0 ? (first ? 'first' : 'later') : undefined}>
        {Number(day.slice(8))}
      </span>
      <span className="for-ears">{takesWords({ from, ends, bare: bare.length > 0, first, tonight })}</span>
      <span className="month-marks" aria-hidden="true">
        {from.map(({ letter, form }) => (
          <span className="month-take" data-form={form} key={letter}>
            {letter}
          </span>
        ))}
        {ends.map(({ letter }) => (
          <span className="month-end" key={letter}>
            {letter}
          </span>
        ))}
      </span>
    </>
  )
}
