/** A plan on hold, or one whose hold has just ended: go on, or hold it longer. No typing. */
import { useState } from 'react'
import { addDays, type Day, holdPlan, isDay, later, type TonightLine } from '../../../../core/index.ts'
import { Actions, Button, LinkButton } from '../../../parts/Actions.tsx'
import { DayField } from '../../../parts/DayField.tsx'
import { dayEcho, dayWords } from '../../../words/dates.ts'
import { holdOverWords } from '../../../words/nights.ts'
import type { Dosing } from '../useDosing.ts'

type HoldingProps = { readonly line: TonightLine; readonly until: Day; readonly dosing: Dosing }

/** Days, as far ahead as people usually say. Our own judgement. */
const offered = [7, 14, 28]

export const Holding = ({ line, until, dosing }: HoldingProps) => {
  const [longer, setLonger] = useState(false)
  const [typed, setTyped] = useState('')
  const { night, plan } = line
  const held = until > night
  const hold = (to: Day) => () =>
    void dosing.record((world, { now }) => holdPlan(world, { plan: plan.plan, until: to }, now), {
      plan: plan.plan,
      did: to > night ? 'held' : 'goesOn',
    })
  const from = later(until, night)
  return (
    <>
      {!held && <p>{holdOverWords(until, night)}</p>}
      <Actions>
        {held && (
          <Button kind="quiet" waiting={dosing.busy} onAct={hold(night)}>
            Go on now
          </Button>
        )}
        {longer ? (
          offered.map((days) => (
            <Button key={days} kind="quiet" waiting={dosing.busy} onAct={hold(addDays(from, days))}>
              Until {dayWords(addDays(from, days), night)}
            </Button>
          ))
        ) : (
          <LinkButton onAct={() => setLonger(true)}>Hold longer</LinkButton>
        )}
      </Actions>
      {longer && (
        <>
          <DayField
            label="Or until another day"
            value={typed}
            earliest={night}
            onChange={setTyped}
            echo={dayEcho(typed)}
          />
          {isDay(typed) && (
            <Actions>
              <Button kind="quiet" waiting={dosing.busy} onAct={hold(typed)}>
                Hold until {dayWords(typed, night)}
              </Button>
            </Actions>
          )}
        </>
      )}
    </>
  )
}
