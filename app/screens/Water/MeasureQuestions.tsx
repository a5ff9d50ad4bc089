/** How much water there truly is: a measured fill, or a shape and its measurements. What is not chosen is not asked. */
import './measures.css'
import { Choice } from '../../parts/Choice.tsx'
import { Facts } from '../../parts/Facts.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { waterUnits } from '../../words/numbers.ts'
import type { Reading } from '../../words/reading.ts'
import { trueVolume, volumeRows } from '../../words/volume.ts'
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
  share: [['solids', 'Rock and sand take up', '%']],
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
  const soFar = waterSoFar(fields)
  const asked = fields.form !== 'none'
  const real = trueVolume(soFar)
  const whole = wrongAt(wrong, 'measures')
  return (
    <div className="measures">
      <NumberField
        label="A measured fill, if you have one"
        unit={water}
        hint={`Poured in by the bucket, for instance; ten litres weigh over 10\u00a0kg. It outranks all measurements.`}
        value={fields.measured}
        onChange={(measured) => type({ measured })}
        error={error('measured')}
      />
      <Choice label="Shape of the display" options={forms} value={fields.form} onChange={(form) => type({ form })} />
      {(asked || real) && (
        <div className="measures-true" role="status">
          <Facts facts={[{ term: 'True volume', fact: real?.fact ?? 'not known yet' }]} />
        </div>
      )}
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
          <div className="measures-figures">{[...ofForm[fields.form], ...ofTaken[fields.taken]].map(number)}</div>
          <Choice
            label="Rock and sand"
            options={[
              {
                value: 'share',
                label: 'A share of the display',
                hint: '10 to 15 % is common practice; your own estimate is better.',
              },
              { value: 'sandAndRock', label: 'Depth of sand and weight of rock' },
            ]}
            value={fields.solidsBy}
            onChange={(solidsBy) => type({ solidsBy })}
          />
          <div className="measures-figures">{ofSolids[fields.solidsBy].map(number)}</div>
          <div className="measures-figures">
            {number(['sump', 'Running water in the sump', water])}
            {number(['refugium', 'Running water in the refugium', water])}
          </div>
          <p className="field-hint">
            As it stands while the pump runs, not up to the brim. Leave empty what there is none of.
          </p>
        </>
      )}
      {real && <Facts facts={volumeRows(soFar)} />}
      {whole?.why === 'vast' ? (
        <VastQuestion refusal={whole} reading={reading} onYes={() => change({ vastMeasuresAreRight: true })} />
      ) : (
        whole && <p className="field-error">{error('measures')}</p>
      )}
    </div>
  )
}
