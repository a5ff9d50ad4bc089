/** One tank of the month's page: what one dose is, and its nights with a box to tick. */
import { bareAmong, dueOf, type TankAhead, turnsOf } from '../../../../core/index.ts'
import { wishesOf } from '../../../reminders/asked.ts'
import { useMatter } from '../../../state/device.ts'
import { phoneZone } from '../../../state/phoneZone.ts'
import { bareWords, hoursWords, noNightsWords, noneLeft, noPlanWords, onDay, turnLines } from '../../../words/paper.ts'
import { planWords } from '../../../words/plan.ts'
import type { Reading } from '../../useReading.ts'

type MonthTankProps = { readonly of: TankAhead; readonly reading: Reading }

export const MonthTank = ({ of: { tank, rounds }, reading: { world, now, today } }: MonthTankProps) => {
  const wishes = wishesOf(useMatter('wishes'), phoneZone())
  // Two foods of one tank may fall on the same nights: the lamp is told once.
  const byNight = new Map(rounds.flatMap(({ nights }) => nights.map((each) => [each.night, each] as const)))
  const nights = [...byNight.values()].sort((a, b) => (a.night < b.night ? -1 : 1))
  const hours = hoursWords(world, tank, nights, wishes)
  return (
    <section className="month-tank">
      <h3 className="month-name">{tank.name}</h3>
      {rounds.length === 0 && <p>{noPlanWords}</p>}
      {hours && <p className="month-hours">{hours}</p>}
      {rounds.map((round) => {
        const bare = bareAmong(round.nights)
        return (
          <div className="month-round" key={round.plan.plan}>
            <p className="month-plan">{planWords(round.plan, round.food)}.</p>
            {turnLines(turnsOf(round.nights), world, now).map((line) => (
              <p key={line}>{line}</p>
            ))}
            {bare && <p className="month-bare">{bareWords(bare, round)}</p>}
            {round.nights.length === 0 && <p>{noNightsWords(dueOf(world, round.plan, now), today)}</p>}
            <ul className="month-nights">
              {round.nights.map(({ night, serving }) => (
                <li key={night}>
                  <svg className="month-box" viewBox="0 0 12 12" aria-hidden="true">
                    <path d="M1 1h10v10h-10z" />
                  </svg>
                  <span>
                    {onDay(night)}
                    {!serving && <small>{noneLeft}</small>}
                  </span>
                </li>
              ))}
            </ul>
          </div>
        )
      })}
    </section>
  )
}
