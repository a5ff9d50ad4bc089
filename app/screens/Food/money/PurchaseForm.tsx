/** What was paid for a parcel, what was in it, and whose share is what. */

import { Choice } from '../../../parts/Choice.tsx'
import { DayField } from '../../../parts/DayField.tsx'
import { Field } from '../../../parts/Field.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { NumberField } from '../../../parts/NumberField.tsx'
import { Section } from '../../../parts/Section.tsx'
import { dayEcho } from '../../../words/dates.ts'
import { useReading } from '../../useReading.ts'
import { InTheParcel } from './InTheParcel.tsx'
import type { PurchaseFields } from './purchaseFields.ts'
import { ShareOut } from './ShareOut.tsx'
import type { MoneyAct } from './useMoneyAct.ts'

export type PurchaseFormProps = {
  readonly fields: PurchaseFields
  readonly change: (fields: Partial<PurchaseFields>) => void
  readonly act: MoneyAct
}

export const PurchaseForm = ({ fields, change, act }: PurchaseFormProps) => {
  const { today } = useReading()
  const code = fields.currency.toUpperCase()
  return (
    <>
      <Section title="In the parcel">
        <InTheParcel fields={fields} change={change} act={act} />
      </Section>
      <Section title="What was paid">
        <Choice
          label="What was paid for all of it?"
          options={[
            { value: 'price', label: 'A price' },
            { value: 'free', label: 'It was free' },
            { value: 'notKnown', label: 'Not known' },
          ]}
          value={fields.paid}
          onChange={(paid) => change({ paid })}
        />
        {fields.paid === 'price' && (
          <NumberField
            label="All of it, without postage"
            value={fields.price}
            unit={code}
            error={act.wrong('price')}
            onChange={(price) => change({ price })}
          />
        )}
        <NumberField
          label="Postage"
          hint="Leave it empty if there was none, or you don’t know."
          value={fields.postage}
          unit={(fields.postageCurrency || fields.currency).toUpperCase()}
          error={act.wrong('postage')}
          onChange={(postage) => change({ postage })}
        />
        <DayField
          label="Bought on"
          hint="Leave it empty if you don’t know."
          value={fields.on}
          latest={today}
          echo={dayEcho(fields.on)}
          error={act.wrong('on')}
          onChange={(on) => change({ on })}
        />
        <MoreExact
          label={`In ${code || 'which currency?'}`}
          open={act.wrong('currency') !== undefined || act.wrong('postageCurrency') !== undefined}
        >
          <Field
            label="Currency"
            hint="Three letters, such as GBP, EUR or USD."
            value={fields.currency}
            error={act.wrong('currency')}
            onChange={(currency) => change({ currency })}
          />
          <Field
            label="Postage was paid in another currency"
            hint="Leave it empty if it was the same."
            value={fields.postageCurrency}
            error={act.wrong('postageCurrency')}
            onChange={(postageCurrency) => change({ postageCurrency })}
          />
        </MoreExact>
      </Section>
      {fields.things.length > 0 && (
        <Section title="Whose share is what">
          <ShareOut fields={fields} change={change} act={act} />
        </Section>
      )}
    </>
  )
}
