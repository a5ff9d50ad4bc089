/** Asks which food, and lets a new one be named in place. */
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { foodKindOptions } from '../../words/names.ts'
import { useReading } from '../useReading.ts'
import { foodsOffered, type PickFields } from './pick.ts'
import type { Act } from './useAct.ts'

type PickFieldProps = {
  readonly fields: PickFields
  readonly onChange: (fields: Partial<PickFields>) => void
  readonly act: Act
}

export const PickField = ({ fields, onChange, act }: PickFieldProps) => {
  const { world, now } = useReading()
  const known = foodsOffered(world, fields.food, now)
  const isNew = !known.some(({ food }) => food === fields.food)
  return (
    <>
      {known.length > 0 && (
        <Choice
          label="Which food?"
          options={[
            ...known.map(({ food, name }): { value: string; label: string } => ({ value: food, label: name })),
            { value: 'new', label: 'Another food' },
          ]}
          value={isNew ? 'new' : fields.food}
          onChange={(food) => onChange({ food })}
        />
      )}
      {isNew && (
        <>
          <Field
            label="What do you call it?"
            hint="Usual figures for its kind are taken; you can put in your label’s own later."
            value={fields.foodName}
            onChange={(foodName) => onChange({ foodName })}
            error={act.wrong('foodName')}
          />
          <Choice
            label="What kind of food is it?"
            options={foodKindOptions}
            value={fields.sort}
            onChange={(sort) => onChange({ sort })}
          />
        </>
      )}
    </>
  )
}
