/** "What food have you?": a bottle, portions in the freezer, or none yet; each as easy as the other. */
import type { Day } from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { CountField } from '../../parts/CountField.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Field } from '../../parts/Field.tsx'
import { ListField } from '../../parts/ListField.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { UnitNumberField } from '../../parts/UnitNumberField.tsx'
import { dayEcho, monthsBack } from '../../words/dates.ts'
import { foodKindOptions } from '../../words/names.ts'
import { bottleUnitOptions } from '../../words/numbers.ts'
import type { Reading } from '../../words/reading.ts'
import { refusalText } from '../../words/refusals.ts'
import type { FoodField, FoodFields, FoodWrong } from './foodFields.ts'

type Props = {
  readonly fields: FoodFields
  readonly change: (fields: Partial<FoodFields>) => void
  readonly wrong: FoodWrong | undefined
  readonly reading: Reading
}

/** Portions keep about two years; a few months more, for whoever has older ones. */
const monthsOffered = 30

export const FoodQuestion = ({ fields, change, wrong, reading }: Props) => {
  const error = (field: FoodField): string | undefined => {
    if (wrong?.field !== field) return undefined
    return wrong.refusal.why === 'choose' ? 'Choose one, please.' : refusalText(wrong.refusal, reading)
  }
  return (
    <>
      <Choice
        label="What food have you?"
        options={[
          { value: 'bottle', label: 'A bottle in the fridge' },
          { value: 'portions', label: 'Frozen portions already' },
          { value: 'nothing', label: 'None yet' },
        ]}
        value={fields.have ?? null}
        onChange={(have) => change({ have })}
        error={error('have')}
      />
      {fields.have === 'bottle' && <BottlePart fields={fields} change={change} error={error} />}
      {fields.have === 'portions' && (
        <PortionsPart fields={fields} change={change} error={error} today={reading.today} />
      )}
      {fields.have !== undefined && fields.have !== 'nothing' && (
        <MoreExact label="Its name, its kind, its door">
          <Field label="What you call the food" value={fields.foodName} onChange={(foodName) => change({ foodName })} />
          <Choice
            label="What kind is it?"
            options={foodKindOptions}
            value={fields.sort}
            onChange={(sort) => change({ sort })}
          />
          <Field
            label={fields.have === 'bottle' ? 'Which fridge' : 'Which freezer'}
            hint={`Left empty: kitchen ${fields.have === 'bottle' ? 'fridge' : 'freezer'}.`}
            value={fields.placeName}
            onChange={(placeName) => change({ placeName })}
          />
        </MoreExact>
      )}
    </>
  )
}

type PartProps = Pick<Props, 'fields' | 'change'> & { readonly error: (field: FoodField) => string | undefined }

const BottlePart = ({ fields, change, error }: PartProps) => (
  <>
    <UnitNumberField
      label="What does the bottle hold?"
      hint="The number on its label."
      value={fields.size}
      onChange={(size) => change({ size })}
      unitLabel="Unit of the bottle"
      units={bottleUnitOptions}
      unit={fields.sizeUnit ?? null}
      onUnit={(sizeUnit) => change({ sizeUnit })}
      error={error('size')}
      unitError={error('sizeUnit')}
    />
    <Choice
      label="Is it full?"
      options={[
        { value: 'new', label: 'New: arrived and opened today' },
        { value: 'begun', label: 'Begun already' },
      ]}
      value={fields.begun}
      onChange={(begun) => change({ begun })}
    />
    {fields.begun === 'begun' && (
      <>
        <NumberField
          label="About how full?"
          unit="%"
          value={fields.full}
          onChange={(full) => change({ full })}
          error={error('full')}
        />
        <DayField
          label="Arrived about when?"
          hint="Its life in the fridge counts from then."
          value={fields.arrived}
          onChange={(arrived) => change({ arrived })}
          echo={dayEcho(fields.arrived)}
          error={error('arrived')}
        />
      </>
    )}
  </>
)

const PortionsPart = ({ fields, change, error, today }: PartProps & { readonly today: Day }) => (
  <>
    <CountField
      label="How many portions?"
      value={fields.count}
      onChange={(count) => change({ count })}
      error={error('count')}
    />
    <NumberField
      label="How much is in each?"
      unit="mL"
      value={fields.each}
      onChange={(each) => change({ each })}
      error={error('each')}
    />
    <ListField
      label="Frozen about when?"
      options={monthsBack(today, monthsOffered)}
      value={fields.month}
      onChange={(month) => change({ month })}
      echo="Taken as the first of the month, the earliest it can be."
    />
  </>
)
