/** "I have ordered it": the day, and when it is to come if the shop said so. */
import { useState } from 'react'
import { type Day, type FoodDescribed, isDay, recordOrder } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { DayField } from '../../../parts/DayField.tsx'
import { Form } from '../../../parts/Form.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { dayEcho } from '../../../words/dates.ts'
import { noted } from '../../../words/orderPage.ts'
import { hereIn, useReading } from '../../useReading.ts'
import type { OrderDone } from './Said.tsx'
import { useOrderAct, wrong } from './useOrderAct.ts'
import { Wrong } from './Wrong.tsx'

type Props = { readonly food: FoodDescribed; readonly onDone: OrderDone }

export const HaveOrdered = ({ food, onDone }: Props) => {
  const [times, setTimes] = useState(0)
  return (
    <MoreExact key={times} label="I have ordered it" of={food.name}>
      <OrderForm
        food={food}
        onDone={(...done) => {
          setTimes(times + 1)
          onDone(...done)
        }}
      />
    </MoreExact>
  )
}

/** Of a field left empty the day is not asked again: today for the order, not known for its coming. */
const readDays = (fields: { readonly on: string; readonly comes: string }, today: Day) => ({
  on: fields.on === '' ? today : isDay(fields.on) ? fields.on : undefined,
  comes: fields.comes === '' || isDay(fields.comes),
})

const OrderForm = ({ food, onDone }: Props) => {
  const { today } = useReading()
  const act = useOrderAct()
  const { fields, change: type, clear } = useDraft(`order/${food.food}`, { on: '', comes: '' })
  const change = (changed: Partial<typeof fields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    const read = readDays(fields, today)
    const written = await act.send((world, { now }) => {
      const { on } = read
      if (on === undefined || !read.comes)
        return wrong({
          ...(on === undefined ? { on: { why: 'dayMissing' } } : {}),
          ...(read.comes ? {} : { comes: { why: 'dayMissing' } }),
        })
      const comes = isDay(fields.comes) ? fields.comes : undefined
      const ordered = recordOrder(world, { food: food.food, on, comes }, hereIn(world, now))
      if (ordered.ok) return ordered
      return wrong({ [ordered.refusal.why === 'orderedNotYet' ? 'on' : 'comes']: ordered.refusal })
    })
    if (!written) return
    void clear()
    onDone(noted.ordered(food.name, read.on ?? today, today), written)
  }
  return (
    <Form onSend={save}>
      <DayField
        label="Ordered on"
        hint={fields.on === '' ? 'Left empty: today.' : undefined}
        value={fields.on}
        onChange={(on) => change({ on })}
        echo={dayEcho(fields.on)}
        latest={today}
        error={act.wrong('on')}
      />
      <DayField
        label="To come on"
        hint={fields.comes === '' ? 'Left empty where nobody has said.' : undefined}
        value={fields.comes}
        onChange={(comes) => change({ comes })}
        echo={dayEcho(fields.comes)}
        error={act.wrong('comes')}
      />
      <Wrong act={act} />
      <Actions>
        <Button submit waiting={act.busy}>
          I have ordered it
        </Button>
      </Actions>
    </Form>
  )
}
