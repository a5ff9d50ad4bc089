/** One bottle, or a pack of them, as it is offered. */
import { LinkButton } from '../../../parts/Actions.tsx'
import { Choice } from '../../../parts/Choice.tsx'
import { CountField } from '../../../parts/CountField.tsx'
import { Field } from '../../../parts/Field.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { NumberField } from '../../../parts/NumberField.tsx'
import { Section } from '../../../parts/Section.tsx'
import { UnitNumberField } from '../../../parts/UnitNumberField.tsx'
import { fieldText } from '../../../words/foodRefusals.ts'
import { bottleUnitOptions } from '../../../words/numbers.ts'
import { packWords, placeWords } from '../../../words/worth.ts'
import { useReading } from '../../useReading.ts'
import { mostInPack, type OfferFields, type OfferTroubles } from './offerFields.ts'

type OfferFormProps = {
  readonly place: number
  readonly fields: OfferFields
  readonly wrong: OfferTroubles
  readonly change: (changed: Partial<OfferFields>) => void
  readonly onRemove: (() => void) | undefined
}

export const OfferForm = ({ place, fields, wrong, change, onRemove }: OfferFormProps) => {
  const reading = useReading()
  const says = (at: keyof OfferFields) => {
    const refusal = wrong[at]
    return refusal && fieldText(refusal, reading)
  }
  const code = fields.currency.toUpperCase()
  return (
    <Section title={placeWords(place)}>
      <UnitNumberField
        label="How large is it?"
        value={fields.size}
        onChange={(size) => change({ size })}
        error={says('size')}
        unitLabel="Measured in"
        units={bottleUnitOptions}
        unit={fields.unit}
        onUnit={(unit) => change({ unit })}
      />
      <div className="pair">
        {fields.paid === 'price' && (
          <NumberField
            label="Price"
            unit={code}
            value={fields.price}
            onChange={(price) => change({ price })}
            error={says('price')}
          />
        )}
        <NumberField
          label="Postage"
          unit={code}
          value={fields.postage}
          onChange={(postage) => change({ postage })}
          error={says('postage')}
        />
      </div>
      <MoreExact
        label={packWords(fields.bottles, fields.paid, code)}
        of={placeWords(place)}
        open={says('bottles') !== undefined || says('currency') !== undefined}
      >
        <Choice
          label="What does it cost?"
          options={[
            { value: 'price', label: 'A price' },
            { value: 'free', label: 'It is free' },
            { value: 'notKnown', label: 'Not known' },
          ]}
          value={fields.paid}
          onChange={(paid) => change({ paid })}
        />
        <CountField
          label="Bottles in the pack"
          min={1}
          max={mostInPack}
          value={fields.bottles}
          onChange={(bottles) => change({ bottles })}
          error={says('bottles')}
        />
        <Field
          label="Currency"
          hint="Three letters, such as GBP, EUR or USD."
          value={fields.currency}
          onChange={(currency) => change({ currency })}
          error={says('currency')}
        />
        {onRemove && <LinkButton onAct={onRemove}>Leave this one out</LinkButton>}
      </MoreExact>
    </Section>
  )
}
