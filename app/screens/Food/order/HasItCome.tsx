/** An order on its way: it has come, it is still waited for, or it was never made. */
import { type FoodDescribed, isDay, neverOrdered, type Ordered, stillWaiting } from '../../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../../parts/Actions.tsx'
import { DayField } from '../../../parts/DayField.tsx'
import { Form } from '../../../parts/Form.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { dayEcho } from '../../../words/dates.ts'
import { dayNamed } from '../../../words/ordering.ts'
import { noted } from '../../../words/orderPage.ts'
import { hereIn, useReading } from '../../useReading.ts'
import type { OrderDone } from './Said.tsx'
import { beside, useOrderAct, wrong } from './useOrderAct.ts'
import { Wrong } from './Wrong.tsx'

type Props = { readonly food: FoodDescribed; readonly ordered: Ordered; readonly onDone: OrderDone }

export const HasItCome = ({ food, ordered, onDone }: Props) => {
  const { today } = useReading()
  const act = useOrderAct()
  const { order, comes, late } = ordered
  const never = async () => {
    const struck = await act.send((world, { now }) =>
      beside(neverOrdered(world, { food: food.food, on: order.on }, now), ''),
    )
    if (struck) onDone(noted.never, struck)
  }
  return (
    <>
      <p>Ordered on {dayNamed(order.on, today)}.</p>
      <Actions>
        <ButtonLink href="#/food/bottle/new" kind={late ? 'primary' : 'quiet'}>
          It has come: log the bottle
        </ButtonLink>
      </Actions>
      <MoreExact label="Still waiting for it" of={food.name}>
        <Waiting key={comes} food={food} ordered={ordered} onDone={onDone} />
      </MoreExact>
      <MoreExact label="It was never ordered" of={food.name}>
        <Wrong act={act} />
        <Actions>
          <Button kind="quiet" onAct={() => void never()} waiting={act.busy}>
            Cross it out
          </Button>
        </Actions>
      </MoreExact>
    </>
  )
}

const Waiting = ({ food, ordered: { order }, onDone }: Props) => {
  const { today } = useReading()
  const act = useOrderAct()
  const { fields, change, clear } = useDraft(`waiting/${food.food}`, { comes: '' })
  const save = async () => {
    const { comes } = fields
    const written = await act.send((world, { now }) =>
      isDay(comes)
        ? beside(stillWaiting(world, { food: food.food, on: order.on, comes }, hereIn(world, now)), 'comes')
        : wrong({ comes: { why: 'dayMissing' } }),
    )
    if (!written || !isDay(comes)) return
    void clear()
    onDone(noted.waiting(comes, today), written)
  }
  return (
    <Form onSend={save}>
      <DayField
        label="When is it to come now?"
        value={fields.comes}
        onChange={(comes) => {
          act.reset()
          change({ comes })
        }}
        echo={dayEcho(fields.comes)}
        earliest={today}
        error={act.wrong('comes')}
      />
      <Wrong act={act} />
      <Actions>
        <Button kind="quiet" submit waiting={act.busy}>
          Still waiting
        </Button>
      </Actions>
    </Form>
  )
}
