/** "How much water?": a number, its unit, and "about". */
import { litres, readWater, usGallons } from '../../../core/index.ts'
import { UnitNumberField } from '../../parts/UnitNumberField.tsx'
import { about, waterUnitOptions, waterUnits } from '../../words/numbers.ts'
import type { Reading } from '../../words/reading.ts'
import { type WaterFormRefusal, waterRefusalText } from '../../words/waterRefusals.ts'
import { type TankWrong, wrongAt } from './readFields.ts'
import type { TankFields } from './tankFields.ts'
import { VastQuestion } from './VastQuestion.tsx'

type Props = {
  readonly fields: TankFields
  readonly change: (fields: Partial<TankFields>) => void
  readonly wrong: TankWrong
  readonly reading: Reading
}

export const WaterQuestion = ({ fields, change, wrong, reading }: Props) => {
  const said = (why: WaterFormRefusal | undefined) => why && waterRefusalText(why, reading)
  const volume = wrongAt(wrong, 'volume')
  return (
    <>
      <UnitNumberField
        label="How much water is in it?"
        hint={echo(fields) ?? 'Display and sump together. A round number will do.'}
        value={fields.volume}
        onChange={(typed) => change({ volume: typed, vastIsRight: false })}
        unitLabel="Unit"
        units={waterUnitOptions}
        unit={fields.unit ?? null}
        onUnit={(unit) => change({ unit })}
        error={volume?.why === 'vast' ? undefined : said(volume)}
        unitError={said(wrongAt(wrong, 'unit'))}
      />
      {volume?.why === 'vast' && (
        <VastQuestion refusal={volume} reading={reading} onYes={() => change({ vastIsRight: true })} />
      )}
    </>
  )
}

/** The number as it was understood, in the other unit; without a unit, in all of them. */
const echo = (fields: TankFields): string | undefined => {
  const readings = waterUnitOptions.flatMap(({ value: unit }) => {
    const read = readWater(fields.volume, unit, true)
    return read.ok ? [{ unit, litres: litres(read.value), value: read.value.value }] : []
  })
  const [first] = readings
  if (!first) return undefined
  if (!fields.unit)
    return `${readings.map((reading) => `${about(reading.value)} ${waterUnits[reading.unit]} ${reading.unit === 'L' ? '' : `are ${about(reading.litres)} litres`}`.trim()).join('; ')}.`
  const chosen = readings.find(({ unit }) => unit === fields.unit)
  if (!chosen) return undefined
  return fields.unit === 'L'
    ? `${about(chosen.value)} litres, about ${about(usGallons({ value: chosen.value, unit: 'L' }))} US gallons.`
    : `${about(chosen.value)} ${waterUnits[fields.unit]}, about ${about(chosen.litres)} litres.`
}
