/** A parcel goes on record. */
import { useLocation } from 'wouter'
import { type BottleId, type Entry, type Fact, paidInAll } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { Form } from '../../../parts/Form.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { Page } from '../../../parts/Page.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { parcelWords } from '../../../words/parcel.ts'
import { Unfinished } from '../../Unfinished.tsx'
import { useReading } from '../../useReading.ts'
import { NotNow } from '../NotNow.tsx'
import { PurchaseForm } from './PurchaseForm.tsx'
import { newPurchaseFields, type PurchaseFields } from './purchaseFields.ts'
import { readPurchase, savePurchase } from './readPurchase.ts'
import { useMoneyAct } from './useMoneyAct.ts'

type PurchaseNewProps = {
  /** She came from this bottle. */
  readonly bottle: BottleId | undefined
  readonly onSaved: (written: readonly Entry<Fact>[]) => void
}

export const PurchaseNew = ({ bottle, onSaved }: PurchaseNewProps) => {
  const reading = useReading()
  const { world, now, today } = reading
  const [, go] = useLocation()
  const act = useMoneyAct()
  const first = newPurchaseFields(world, bottle, today, now)
  const { fields, change: type, clear, restoredFrom } = useDraft(bottle ? `purchase/${bottle}` : 'purchase', first)
  const change = (changed: Partial<PurchaseFields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    const written = await act.send(savePurchase(fields))
    if (!written) return
    await clear()
    onSaved(written)
    go(`/food/purchase/${fields.purchase}`)
  }
  const { asked } = readPurchase(fields)
  const whole = paidInAll(asked)
  const begun = whole.ok && whole.value !== undefined
  return (
    <Page
      title="A parcel"
      answer={
        begun
          ? parcelWords(whole.value, asked.things, world, now)
          : 'One price for several things: share it as you like.'
      }
    >
      <Form onSend={save}>
        <Unfinished {...reading} since={restoredFrom} onFresh={clear} />
        <PurchaseForm fields={fields} change={change} act={act} />
        {act.wrong('') && <Notice kind="refusal">{act.wrong('')}</Notice>}
        <Actions>
          <Button submit waiting={act.busy}>
            Put the parcel on record
          </Button>
          <NotNow clear={clear} />
        </Actions>
      </Form>
    </Page>
  )
}
