/** A bottle comes home. For a food she has had before, there is nothing to type. */
import { useLocation } from 'wouter'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Form } from '../../parts/Form.tsx'
import { Page } from '../../parts/Page.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { BottleQuestions } from './BottleQuestions.tsx'
import { bottleAnswer } from './bottleAnswer.ts'
import { asLastOf, type BottleFields, newBottleFields } from './bottleFields.ts'
import { NotNow } from './NotNow.tsx'
import { PickField } from './PickField.tsx'
import { Refused } from './Refused.tsx'
import { logBottle } from './readBottle.ts'
import { useAct } from './useAct.ts'

export const BottleNew = () => {
  const reading = useReading()
  const [, go] = useLocation()
  const act = useAct()
  const first = newBottleFields(reading.world, reading.today, reading.now)
  const { fields, change: type, clear, restoredFrom } = useDraft('bottle', first)
  const change = (changed: Partial<BottleFields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    if (!(await act.send(logBottle(fields)))) return
    await clear()
    go(fields.paid === 'parcel' ? `/food/purchase/new/${fields.bottle}` : `/food/bottle/${fields.bottle}`)
  }
  return (
    <Page title="A bottle comes home" answer={bottleAnswer(fields, reading)}>
      <Form onSend={save}>
        <Unfinished {...reading} since={restoredFrom} onFresh={clear} />
        <PickField
          fields={fields}
          act={act}
          onChange={(picked) => change({ ...picked, ...(picked.food ? asLastOf(reading.world, picked.food) : {}) })}
        />
        <BottleQuestions fields={fields} change={change} act={act} />
        <Refused act={act} />
        <Actions>
          <Button submit waiting={act.busy}>
            Put it on record
          </Button>
          <NotNow clear={clear} />
        </Actions>
      </Form>
    </Page>
  )
}
