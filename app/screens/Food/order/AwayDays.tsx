/** Days on which nobody takes a parcel in: those to come, and a way to put more on the list. */
import { useState } from 'react'
import { type Day, type DaysAway, isDay, notAway, recordAway } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { DayField } from '../../../parts/DayField.tsx'
import { Form } from '../../../parts/Form.tsx'
import { Line, Lines } from '../../../parts/Lines.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { dayEcho } from '../../../words/dates.ts'
import { awayWords, noted } from '../../../words/orderPage.ts'
import { useReading } from '../../useReading.ts'
import type { OrderDone } from './Said.tsx'
import { beside, useOrderAct, wrong } from './useOrderAct.ts'
import { Wrong } from './Wrong.tsx'

type Props = { readonly onDone: OrderDone }

/** Two phones may have said the same. */
const coming = (all: readonly DaysAway[], today: Day): readonly DaysAway[] =>
  [...new Map(all.map((away) => [`${away.from}/${away.to}`, away])).values()]
    .filter(({ to }) => to >= today)
    .sort((a, b) => (a.from < b.from ? -1 : 1))

export const AwayDays = ({ onDone }: Props) => {
  const { world, today } = useReading()
  const act = useOrderAct()
  const [times, setTimes] = useState(0)
  const home = async ({ from, to }: DaysAway) => {
    const struck = await act.send((known, { now }) => beside(notAway(known, { from, to }, now), ''))
    if (struck) onDone(noted.home, struck)
  }
  const days = coming(world.daysAway, today)
  return (
    <>
      <Wrong act={act} />
      {days.length === 0 ? (
        <p>None on the list.</p>
      ) : (
        <Lines>
          {days.map((away) => (
            <Line
              key={`${away.from}/${away.to}`}
              end={
                <Button kind="quiet" waiting={act.busy} onAct={() => void home(away)}>
                  Cross out<span className="for-ears">: {awayWords(away, today)}</span>
                </Button>
              }
            >
              {awayWords(away, today)}
            </Line>
          ))}
        </Lines>
      )}
      <MoreExact key={times} label="Put days on the list">
        <AwayForm
          onDone={(...done) => {
            setTimes(times + 1)
            onDone(...done)
          }}
        />
      </MoreExact>
    </>
  )
}

const AwayForm = ({ onDone }: Props) => {
  const { today } = useReading()
  const act = useOrderAct()
  const { fields, change: type, clear } = useDraft('away', { from: '', to: '' })
  const change = (changed: Partial<typeof fields>) => {
    act.reset()
    type(changed)
  }
  const { from } = fields
  // One day is its own last day.
  const to = fields.to === '' ? from : fields.to
  const save = async () => {
    const written = await act.send((world, { now }) => {
      if (!isDay(from) || !isDay(to))
        return wrong({
          ...(isDay(from) ? {} : { from: { why: 'dayMissing' } }),
          ...(fields.to === '' || isDay(to) ? {} : { to: { why: 'dayMissing' } }),
        })
      return beside(recordAway(world, { from, to }, now), 'to')
    })
    if (!written || !isDay(from) || !isDay(to)) return
    void clear()
    onDone(noted.away({ from, to }), written)
  }
  return (
    <Form onSend={save}>
      <DayField
        label="First day"
        value={from}
        onChange={(day) => change({ from: day })}
        echo={dayEcho(from)}
        earliest={today}
        error={act.wrong('from')}
      />
      <DayField
        label="Last day"
        hint={fields.to === '' ? 'Left empty where it is only that day.' : undefined}
        value={fields.to}
        onChange={(day) => change({ to: day })}
        echo={dayEcho(fields.to)}
        earliest={today}
        error={act.wrong('to')}
      />
      <Wrong act={act} />
      <Actions>
        <Button kind="quiet" submit waiting={act.busy}>
          Nobody is at home then
        </Button>
      </Actions>
    </Form>
  )
}
