/** Puts a bottle's entry right: the old one is crossed out, the new one takes its place. */
import { useEffect, useState } from 'react'
import type { BottleId } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { useReading } from '../useReading.ts'
import { BottleQuestions } from './BottleQuestions.tsx'
import { type BottleFields, knownBottleFields } from './bottleFields.ts'
import { PickField } from './PickField.tsx'
import { Refused } from './Refused.tsx'
import { mendBottle } from './readBottle.ts'
import { useAct } from './useAct.ts'

type BottleCorrectProps = {
  readonly bottle: BottleId
  /** She asked to add its price: the fold opens at it. */
  readonly priceFirst: boolean
  readonly onDone: (says: string) => void
}

export const BottleCorrect = ({ bottle, priceFirst, onDone }: BottleCorrectProps) => {
  const { world, now } = useReading()
  const [times, setTimes] = useState(0)
  const known = knownBottleFields(world, bottle, now)
  if (!known) return null
  // The book's figures may have moved on since a draft was left: the form is begun anew for each entry.
  const entry = world.bottles.get(bottle)?.entry ?? ''
  return (
    <MoreExact key={times} label="Change this entry: dates, price, place" open={priceFirst}>
      <CorrectForm
        key={entry}
        form={`bottle/${bottle}/${entry}`}
        known={known}
        priceFirst={priceFirst}
        onDone={() => {
          setTimes(times + 1)
          onDone('Put right. The entry as it was stays in the diary, crossed out.')
        }}
      />
    </MoreExact>
  )
}

type CorrectFormProps = {
  readonly form: string
  readonly known: BottleFields
  readonly priceFirst: boolean
  readonly onDone: () => void
}

const CorrectForm = ({ form, known, priceFirst, onDone }: CorrectFormProps) => {
  const act = useAct()
  const { fields, change: type, clear } = useDraft(form, known)
  useEffect(() => {
    if (priceFirst) type({ paid: 'price' })
  }, [priceFirst, type])
  const change = (changed: Partial<BottleFields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    if (!(await act.send(mendBottle(fields)))) return
    await clear()
    onDone()
  }
  return (
    <Form onSend={save}>
      <PickField fields={fields} onChange={change} act={act} />
      <BottleQuestions fields={fields} change={change} act={act} mending priceFirst={priceFirst} />
      <Refused act={act} />
      <Actions>
        <Button submit waiting={act.busy}>
          Put it right
        </Button>
      </Actions>
    </Form>
  )
}
