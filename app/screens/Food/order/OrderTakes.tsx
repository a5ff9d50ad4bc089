/** Days from ordering to the door, and days to spare: hers, once she says so. */
import { describeOrdering, type Ordering, orderingAt } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { CountField } from '../../../parts/CountField.tsx'
import { Form } from '../../../parts/Form.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { noted } from '../../../words/orderPage.ts'
import { useReading } from '../../useReading.ts'
import type { OrderDone } from './Said.tsx'
import { useOrderAct, wrong } from './useOrderAct.ts'
import { Wrong } from './Wrong.tsx'

export const OrderTakes = ({ onDone }: { readonly onDone: OrderDone }) => {
  const { world, now } = useReading()
  const ordering = orderingAt(world, now)
  const hers = world.ordering.length > 0
  // A key: what holds now is what the form begins with.
  return (
    <>
      {!hers && <p>A week and a week are assumed until you say what yours are.</p>}
      <TakesForm key={`${ordering.leadDays}/${ordering.cushionDays}`} ordering={ordering} onDone={onDone} />
    </>
  )
}

type TakesFormProps = { readonly ordering: Ordering; readonly onDone: OrderDone }

const TakesForm = ({ ordering: { leadDays, cushionDays }, onDone }: TakesFormProps) => {
  const act = useOrderAct()
  const {
    fields,
    change: type,
    clear,
  } = useDraft<{ leadDays: number | null; cushionDays: number | null }>('ordering', { leadDays, cushionDays })
  const change = (changed: Partial<typeof fields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    const { leadDays: lead, cushionDays: cushion } = fields
    const written = await act.send((_, { now }) => {
      if (lead === null || cushion === null)
        return wrong({
          ...(lead === null ? { leadDays: { why: 'howManyDays' } } : {}),
          ...(cushion === null ? { cushionDays: { why: 'howManyDays' } } : {}),
        })
      const described = describeOrdering({ leadDays: lead, cushionDays: cushion }, now)
      if (described.ok) return described
      const { refusal } = described
      return wrong(Object.fromEntries(refusal.which.map((field) => [field, refusal])))
    })
    if (!written || lead === null || cushion === null) return
    void clear()
    onDone(noted.takes(lead, cushion), written)
  }
  return (
    <Form onSend={save}>
      <CountField
        label="Days from ordering to the door"
        fewer="One day fewer"
        more="One day more"
        max={365}
        value={fields.leadDays}
        onChange={(days) => change({ leadDays: days })}
        error={act.wrong('leadDays')}
      />
      <CountField
        label="Days to spare"
        fewer="One day fewer"
        more="One day more"
        max={365}
        value={fields.cushionDays}
        onChange={(days) => change({ cushionDays: days })}
        error={act.wrong('cushionDays')}
      />
      <Wrong act={act} />
      <Actions>
        <Button kind="quiet" submit waiting={act.busy}>
          Save these days
        </Button>
      </Actions>
    </Form>
  )
}
