/** What makes a tank more exact: its measurements, a measured fill, the pipette, the zone. */
import { litres, trueWater } from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { lampChoices } from '../../words/lamp.ts'
import { about, waterUnits } from '../../words/numbers.ts'
import type { Reading } from '../../words/reading.ts'
import { refusalText } from '../../words/refusals.ts'
import { type FieldRefusal, readTankWater, type TankField, type TankFields } from './tankFields.ts'

type Props = {
  readonly fields: TankFields
  readonly change: (fields: Partial<TankFields>) => void
  readonly refusal: FieldRefusal<TankField> | undefined
  readonly reading: Reading
  /** Its name is asked elsewhere on the page. */
  readonly named?: boolean
}

export const ExactFields = ({ fields, change, refusal, reading, named = false }: Props) => {
  const error = (field: TankField) => (refusal?.field === field ? refusalText(refusal.refusal, reading) : undefined)
  const number = (field: TankField, label: string, unit: string, hint?: string) => (
    <NumberField
      label={label}
      unit={unit}
      hint={hint}
      value={fields[field] ?? ''}
      onChange={(typed) => change({ [field]: typed })}
      error={error(field)}
    />
  )
  const water = waterUnits[fields.unit ?? 'L']
  return (
    <>
      {!named && <Field label="Name" value={fields.name} onChange={(name) => change({ name })} />}
      <Choice
        label="How sure is the number?"
        options={[
          { value: 'about', label: 'About' },
          { value: 'exact', label: 'Measured or well known' },
        ]}
        value={fields.about ? 'about' : 'exact'}
        onChange={(sure) => change({ about: sure === 'about' })}
      />
      <Choice
        label="What does the lamp’s clock do?"
        options={lampChoices}
        value={fields.lamp}
        onChange={(lamp) => change({ lamp })}
      />
      <Choice
        label="Inside measurements of the display"
        hint="Glass to glass inside, up to the waterline."
        options={[
          { value: 'none', label: 'Leave them out' },
          { value: 'rectangle', label: 'Rectangle' },
          { value: 'cylinder', label: 'Cylinder' },
        ]}
        value={fields.form}
        onChange={(form) => change({ form })}
      />
      {fields.form === 'rectangle' && (
        <>
          {number('length', 'Length', 'cm')}
          {number('width', 'Width, front to back', 'cm')}
        </>
      )}
      {fields.form === 'cylinder' && number('diameter', 'Diameter', 'cm')}
      {fields.form !== 'none' && (
        <>
          {number('waterline', 'Height of the water', 'cm')}
          {number(
            'solids',
            'Rock and sand take up',
            '%',
            '10 to 15 % is common practice; your own estimate is better.',
          )}
          {number('sump', 'Running water in sump and refugium', water)}
        </>
      )}
      {number(
        'measured',
        'A measured fill, if you have one',
        water,
        'Poured in by the bucket, for instance. It outranks the measurements.',
      )}
      <TrueVolume fields={fields} />
      <Choice
        label="Reckon doses by"
        options={[
          {
            value: 'stated',
            label: 'The number I go by',
            hint: 'A label’s “per 200 gallons” is no more exact than that.',
          },
          { value: 'true', label: 'The true volume', hint: 'From the fill or the measurements above.' },
        ]}
        value={fields.doseBy}
        onChange={(doseBy) => change({ doseBy })}
      />
      {number('mark', 'Smallest mark on the pipette', 'mL')}
      <Field
        label="Time zone of the tank"
        hint="As your phone writes it, for instance Europe/London."
        value={fields.zone}
        onChange={(zone) => change({ zone })}
        error={error('zone')}
      />
    </>
  )
}

const TrueVolume = ({ fields }: { readonly fields: TankFields }) => {
  const water = readTankWater(fields)
  const real = water.ok ? trueWater(water.value) : undefined
  return real ? <p>{`True volume: about ${about(litres(real))} litres.`}</p> : null
}
