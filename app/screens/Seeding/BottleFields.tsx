/** What is asked of live bottles on more than one page. */
import type { BottleUnit, WaterPlace } from '../../../core/index.ts'
import { NumberField } from '../../parts/NumberField.tsx'
import { UnitNumberField } from '../../parts/UnitNumberField.tsx'
import { bottleUnitOptions } from '../../words/numbers.ts'
import { placeWords } from '../../words/seedingEntries.ts'
import type { PlaceFields } from './reading.ts'
import type { Seeding } from './useSeeding.ts'

type HoldsFieldProps = {
  readonly fields: { readonly holds: string; readonly unit: BottleUnit }
  readonly change: (fields: { readonly holds: string } | { readonly unit: BottleUnit }) => void
  readonly act: Seeding
}
export const HoldsField = ({ fields, change, act }: HoldsFieldProps) => (
  <UnitNumberField
    label="What does one bottle hold?"
    value={fields.holds}
    onChange={(holds) => change({ holds })}
    unitLabel="Unit"
    units={bottleUnitOptions}
    unit={fields.unit}
    onUnit={(unit) => change({ unit })}
    error={act.wrong('holds')}
  />
)

type BottlesIntoProps = {
  readonly places: readonly WaterPlace[]
  readonly fields: PlaceFields
  readonly change: (fields: Partial<PlaceFields>) => void
  readonly act: Seeding
  /** Under the first of them. */
  readonly hint?: string
}
export const BottlesInto = ({ places, fields, change, act, hint }: BottlesIntoProps) =>
  places.map((place, index) => (
    <NumberField
      key={place}
      label={`Bottles into ${placeWords[place]}`}
      hint={index === 0 ? hint : undefined}
      value={fields[place]}
      onChange={(bottles) => change({ [place]: bottles })}
      error={act.wrong(place) ?? (index === 0 ? act.wrong('pours') : undefined)}
    />
  ))
