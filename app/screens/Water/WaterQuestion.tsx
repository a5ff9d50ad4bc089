/** "How much water?": a number, its unit, and "about". */
import { litres, readWater, usGallons } from '../../../core/index.ts'
import { Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { UnitNumberField } from '../../parts/UnitNumberField.tsx'
import { about, waterUnitOptions, waterUnits } from '../../words/numbers.ts'
import type { Reading } from '../../words/reading.ts'
import { type AnyRefusal, refusalText } from '../../words/refusals.ts'
import type { FieldRefusal, TankField, TankFields } from './tankFields.ts'

type Props = {
  readonly fields: TankFields
  readonly change: (fields: Partial<TankFields>) => void
  readonly refusal: FieldRefusal<TankField> | undefined
  readonly reading: Reading
}

export const WaterQuestion = ({ fields, change, refusal, reading }: Props) => {
  const wrong = (field: TankField): AnyRefusal | undefined => (refusal?.field === field ? refusal.refusal : undefined)
  const said = (why: AnyRefusal | undefined) => why && refusalText(why, reading)
  const volume = wrong('volume')
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
        unitError={said(wrong('unit'))}
      />
      {volume?.why === 'vast' && (
        <Notice kind="refusal">
          <p>{said(volume)}</p>
          <Button kind="quiet" onAct={() => change({ vastIsRight: true })}>
            Yes, it is that big
          </Button>
        </Notice>
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
