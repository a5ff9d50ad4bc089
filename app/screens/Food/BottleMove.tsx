/** A bottle stands in another fridge now. */
import { useState } from 'react'
import { isBlock, moveBottle, ok, type PlaceId, placeAt } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { standsWords } from '../../words/moving.ts'
import { useReading } from '../useReading.ts'
import type { BottleDeedProps } from './BottleActs.tsx'
import { elsewhere } from './moveFields.ts'
import { PlaceField } from './PlaceField.tsx'
import { type PlaceFields, readPlace } from './place.ts'
import { Refused } from './Refused.tsx'
import { placed, useAct } from './useAct.ts'

export const BottleMove = (props: BottleDeedProps) => {
  const [times, setTimes] = useState(0)
  const onDone = (says: string) => {
    setTimes(times + 1)
    props.onDone(says)
  }
  return (
    <MoreExact key={times} label={isBlock(props.bottle) ? 'Move to a freezer' : 'Move to another fridge'}>
      <MoveForm {...props} onDone={onDone} />
    </MoreExact>
  )
}

const MoveForm = ({ bottle, onDone }: BottleDeedProps) => {
  const { world, now } = useReading()
  const act = useAct()
  // A block of ice goes to a freezer; let thaw there, it comes back.
  const door = isBlock(bottle) ? 'freezer' : 'fridge'
  const {
    fields,
    change: type,
    clear,
  } = useDraft(`move/${bottle.id}/${door}`, elsewhere(world, door, bottle.place, now))
  const change = (changed: Partial<PlaceFields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    const sent = await act.send((latest, context) => {
      const place = readPlace(fields, door, latest, context.now)
      if (!place.ok) return place
      const moved = placed(moveBottle(place.value.world, { bottle: bottle.id, to: place.value.place }, context.now), '')
      return moved.ok ? ok([...place.value.facts, ...moved.value]) : moved
    })
    if (!sent) return
    await clear()
    onDone(standsWords(placeAt(world, fields.place as PlaceId, now)?.name ?? fields.placeName))
  }
  return (
    <Form onSend={save}>
      <PlaceField door={door} fields={fields} onChange={change} act={act} except={bottle.place} />
      <Refused act={act} />
      <Actions>
        <Button submit waiting={act.busy}>
          Move it
        </Button>
      </Actions>
    </Form>
  )
}
