/** Asks which door, and lets a new one be named in place. */
import type { Door, PlaceId } from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { useReading } from '../useReading.ts'
import { type PlaceFields, placesOffered } from './place.ts'
import type { Act } from './useAct.ts'

type PlaceFieldProps = {
  readonly door: Door
  readonly fields: PlaceFields
  readonly onChange: (fields: Partial<PlaceFields>) => void
  readonly act: Act
  /** Where it stands now: no choice. */
  readonly except?: PlaceId
}

export const PlaceField = ({ door, fields, onChange, act, except }: PlaceFieldProps) => {
  const { world, now } = useReading()
  const there = placesOffered(world, door, fields.place, now).filter(({ place }) => place !== except)
  const isNew = !there.some(({ place }) => place === fields.place)
  return (
    <>
      {there.length > 0 && (
        <Choice
          label={`Which ${door}?`}
          options={[
            ...there.map(({ place, name }): { value: string; label: string } => ({ value: place, label: name })),
            { value: 'new', label: `Another ${door}` },
          ]}
          value={isNew ? 'new' : fields.place}
          onChange={(place) => onChange({ place })}
        />
      )}
      {isNew && (
        <Field
          label={`What do you call this ${door}?`}
          value={fields.placeName}
          onChange={(placeName) => onChange({ placeName })}
          error={act.wrong('placeName')}
        />
      )}
    </>
  )
}
