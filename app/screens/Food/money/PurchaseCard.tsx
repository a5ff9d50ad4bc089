/** One parcel as it stands, and the way to put it right. */
import { useState } from 'react'
import {
  type BottleId,
  type Entry,
  type Fact,
  type PurchaseId,
  type PurchaseRecorded,
  paidInAll,
  purchaseAt,
  sharingOf,
} from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { Facts } from '../../../parts/Facts.tsx'
import { Form } from '../../../parts/Form.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { Page } from '../../../parts/Page.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { dayInFull } from '../../../words/dates.ts'
import { price } from '../../../words/money.ts'
import { capital } from '../../../words/numbers.ts'
import { moneyText, parcelWords, shareWords, sharingWords, thingWords } from '../../../words/parcel.ts'
import { SaidAndUndo } from '../../SaidAndUndo.tsx'
import { useReading } from '../../useReading.ts'
import { NotHere } from '../NotHere.tsx'
import { PurchaseForm } from './PurchaseForm.tsx'
import { knownPurchaseFields, type PurchaseFields } from './purchaseFields.ts'
import { savePurchase } from './readPurchase.ts'
import { useMoneyAct } from './useMoneyAct.ts'

type PurchaseCardProps = {
  readonly id: PurchaseId
  /** What was just written down, so that one touch takes it back. */
  readonly written: readonly Entry<Fact>[]
  readonly onWritten: (written: readonly Entry<Fact>[]) => void
}

export const PurchaseCard = ({ id, written, onWritten }: PurchaseCardProps) => {
  const reading = useReading()
  const { world, now } = reading
  const purchase = purchaseAt(world, id, now)
  const [times, setTimes] = useState(0)
  if (!purchase) return <NotHere title="A parcel" says="This parcel is not on record." />
  const whole = paidInAll(purchase)
  const sharing = sharingOf(purchase)
  // Only what stands: once another snapshot holds, "Undo" must not take back the one before it.
  const mine = written.filter(
    ({ fact }) => fact.kind === 'purchaseRecorded' && fact.purchase === id && fact.at === purchase.at,
  )
  return (
    <Page title="A parcel" answer={parcelWords(whole.ok ? whole.value : purchase.paid, purchase.things, world, now)}>
      <div>
        <SaidAndUndo
          said={mine.length > 0 ? { says: 'On record.', written: mine } : undefined}
          reading={reading}
          onUndone={() => onWritten([])}
        />
      </div>
      {!sharing.ok && <Notice>{moneyText(sharing.refusal, reading)}</Notice>}
      <Facts
        facts={[
          { term: 'Bought', fact: purchase.on ? dayInFull(purchase.on) : 'on a day not known' },
          { term: 'Paid', fact: price(purchase.paid) },
          ...(purchase.postage ? [{ term: 'Postage', fact: price(purchase.postage) }] : []),
        ]}
      />
      <div>
        <Facts
          facts={purchase.things.map((thing) => ({
            term: capital(thingWords(thing, world, now)),
            fact: shareWords(thing.share),
            note: <ThingNote thing={thing} />,
          }))}
        />
        {sharing.ok && <p>{sharingWords(sharing.value)}</p>}
      </div>
      <MoreExact key={`${purchase.at} ${times}`} label="Put it right">
        <MendForm
          purchase={purchase}
          onDone={(entries) => {
            setTimes(times + 1)
            onWritten(entries)
          }}
        />
      </MoreExact>
    </Page>
  )
}

const ThingNote = ({ thing: { bottle, alone } }: { readonly thing: PurchaseRecorded['things'][number] }) => (
  <span className="price-note">
    {alone !== undefined && <span>{price(alone)} alone</span>}
    {bottle && (
      <a className="kind-link" href={`#/food/bottle/${bottle satisfies BottleId}`}>
        To the bottle
      </a>
    )}
  </span>
)

type MendFormProps = {
  readonly purchase: PurchaseRecorded
  readonly onDone: (written: readonly Entry<Fact>[]) => void
}
/** The book may have moved on since a draft was left: the form is begun anew for each entry. */
const MendForm = ({ purchase, onDone }: MendFormProps) => {
  const act = useMoneyAct()
  const form = `purchase/${purchase.purchase}/${purchase.at}`
  const { fields, change: type, clear } = useDraft(form, knownPurchaseFields(purchase))
  const change = (changed: Partial<PurchaseFields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    const written = await act.send(savePurchase(fields))
    if (!written) return
    void clear()
    onDone(written)
  }
  return (
    <Form onSend={save}>
      <PurchaseForm fields={fields} change={change} act={act} />
      {act.wrong('') && <Notice kind="refusal">{act.wrong('')}</Notice>}
      <Actions>
        <Button submit waiting={act.busy}>
          Put it right
        </Button>
      </Actions>
    </Form>
  )
}
