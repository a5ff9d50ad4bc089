/** How much water there truly is: a measured fill, or a shape and its measurements. What is not chosen is not asked. */
import { Choice } from '../../parts/Choice.tsx'
import { Facts } from '../../parts/Facts.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { waterUnits } from '../../words/numbers.ts'
import type { Reading } from '../../words/reading.ts'
import { volumeRows } from '../../words/volume.ts'
import type { MeasureFields, TypedMeasure } from './measureFields.ts'
import { type TankWrong, wrongAt } from './readFields.ts'
import { type TankField, type TankFields, waterSoFar } from './tankFields.ts'
import { VastQuestion } from './VastQuestion.tsx'

type Props = {
  readonly fields: TankFields
  readonly change: (fields: Partial<TankFields>) => void
  readonly wrong: TankWrong
  readonly reading: Reading
  readonly error: (field: TankField) => string | undefined
}
type Asked = readonly [field: TypedMeasure, label: string, unit: string, hint?: string]

const forms = [
  { value: 'none', label: 'Leave it out' },
  { value: 'rectangle', label: 'Rectangle' },
  { value: 'bowFront', label: 'Rectangle with a bow front' },
  { value: 'cylinder', label: 'Cylinder' },
  { value: 'hexagon', label: 'Six equal sides' },
] as const

const length: Asked = ['length', 'Length', 'cm']
const width: Asked = ['width', 'Width, front to back', 'cm']
const ofForm: Record<MeasureFields['form'], readonly Asked[]> = {
  none: [],
  rectangle: [length, width],
  bowFront: [
    length,
    ['width', 'Width at the ends, front to back', 'cm'],
    ['bow', 'How far the bow stands out', 'cm', 'At its middle, from the line between the front corners.'],
  ],
  cylinder: [['diameter', 'Diameter', 'cm']],
  hexagon: [['side', 'Length of one side', 'cm']],
}
const ofTaken: Record<MeasureFields['taken'], readonly Asked[]> = {
  inside: [['waterline', 'Height of the water', 'cm', 'From the bottom glass, not from the sand.']],
  outside: [
    ['height', 'Height of the tank', 'cm'],
    ['glass', 'Glass of the sides', 'mm'],
    ['base', 'Glass of the bottom', 'mm'],
    ['down', 'Water below the rim', 'cm', '0 if it stands at the brim.'],
  ],
}
const ofSolids: Record<MeasureFields['solidsBy'], readonly Asked[]> = {
  share: [['solids', 'Rock and sand take up', '%', '10 to 15 % is common practice; your own estimate is better.']],
  sandAndRock: [
    ['sand', 'Depth of the sand', 'cm'],
    ['rock', 'Weight of the rock, dry', 'kg'],
  ],
}

export const MeasureQuestions = ({ fields, change, wrong, reading, error }: Props) => {
  const type = (typed: Partial<TankFields>) => change({ ...typed, vastMeasuresAreRight: false })
  const number = ([field, label, unit, hint]: Asked) => (
    <NumberField
      key={field}
      label={label}
      unit={unit}
      hint={hint}
      value={fields[field]}
      onChange={(typed) => type({ [field]: typed })}
      error={error(field)}
    />
  )
  const water = waterUnits[fields.unit ?? 'L']
  const rows = volumeRows(waterSoFar(fields))
  const whole = wrongAt(wrong, 'measures')
  return (
    <>
      <NumberField
        label="A measured fill, if you have one"
        unit={water}
        hint="Poured in by the bucket, for instance; ten litres weigh over 10 kg. It outranks all measurements."
        value={fields.measured}
        onChange={(measured) => type({ measured })}
        error={error('measured')}
      />
      <Choice label="Shape of the display" options={forms} value={fields.form} onChange={(form) => type({ form })} />
      {fields.form !== 'none' && (
        <>
          <Choice
            label="Measured"
            options={[
              { value: 'inside', label: 'Inside, glass to glass' },
              { value: 'outside', label: 'Outside, over the glass' },
            ]}
            value={fields.taken}
            onChange={(taken) => type({ taken })}
          />
          {ofForm[fields.form].map(number)}
          {ofTaken[fields.taken].map(number)}
          <Choice
            label="Rock and sand"
            options={[
              { value: 'share', label: 'A share of the display' },
              { value: 'sandAndRock', label: 'Depth of sand and weight of rock' },
            ]}
            value={fields.solidsBy}
            onChange={(solidsBy) => type({ solidsBy })}
          />
          {ofSolids[fields.solidsBy].map(number)}
          {number(['sump', 'Running water in the sump', water, 'As it stands while the pump runs, not to the brim.'])}
          {number(['refugium', 'Running water in the refugium', water])}
        </>
      )}
      {rows.length > 0 && <Facts facts={rows} />}
      {whole?.why === 'vast' ? (
        <VastQuestion refusal={whole} reading={reading} onYes={() => change({ vastMeasuresAreRight: true })} />
      ) : (
        whole && <p className="field-error">{error('measures')}</p>
      )}
    </>
  )
}
