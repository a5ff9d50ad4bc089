/** What makes a tank more exact: its measurements, a measured fill, the pipette, the zone. */
import { trueWater } from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { lampChoices } from '../../words/lamp.ts'
import type { Reading } from '../../words/reading.ts'
import { waterRefusalText } from '../../words/waterRefusals.ts'
import { MeasureQuestions } from './MeasureQuestions.tsx'
import { type TankWrong, wrongAt } from './readFields.ts'
import { type TankField, type TankFields, waterSoFar } from './tankFields.ts'

type Props = {
  readonly fields: TankFields
  readonly change: (fields: Partial<TankFields>) => void
  readonly wrong: TankWrong
  readonly reading: Reading
  /** Its name is asked elsewhere on the page. */
  readonly named?: boolean
}

export const ExactFields = ({ fields, change, wrong, reading, named = false }: Props) => {
  const error = (field: TankField) => {
    const found = wrongAt(wrong, field)
    return found && waterRefusalText(found, reading)
  }
  const soFar = waterSoFar(fields)
  // With one volume alone there is nothing to choose.
  const two = (fields.volume.trim() !== '' && trueWater(soFar) !== undefined) || fields.doseBy === 'true'
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
      <MeasureQuestions fields={fields} change={change} wrong={wrong} reading={reading} error={error} />
      {two && (
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
      )}
      <Choice
        label="What does the lamp’s clock do?"
        options={lampChoices}
        value={fields.lamp}
        onChange={(lamp) => change({ lamp })}
      />
      <NumberField
        label="Smallest mark on the pipette"
        unit="mL"
        value={fields.mark}
        onChange={(mark) => change({ mark })}
        error={error('mark')}
      />
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
