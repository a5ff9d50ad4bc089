/** What stays liquid: nothing, or what the plan uses while the bottle is good. */
import { Choice } from '../../parts/Choice.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { dosesWords } from '../../words/entries.ts'
import { millilitres } from '../../words/numbers.ts'
import type { FreezeFields } from './freezeFields.ts'
import { type FreezeOf, freshNeeded } from './readFreezing.ts'

type KeepFreshProps = {
  readonly of: FreezeOf
  readonly fields: FreezeFields
  readonly change: (fields: Partial<FreezeFields>) => void
  readonly wrong: (field: string) => string | undefined
}

export const KeepFresh = ({ of, fields, change, wrong }: KeepFreshProps) => {
  const { doses, amount } = freshNeeded(of)
  return (
    <>
      <Choice
        label="How much stays in the fridge?"
        options={[
          { value: 'nothing', label: 'Nothing: freeze it all' },
          ...(doses > 0
            ? [
                {
                  value: 'plan' as const,
                  label: millilitres(amount),
                  hint: `${dosesWords(doses)}: what your plan uses until its last good day.`,
                },
              ]
            : []),
          { value: 'own', label: 'Another amount' },
        ]}
        value={fields.keep}
        onChange={(keep) => change({ keep })}
        error={wrong('keep')}
      />
      {fields.keep === 'own' && (
        <NumberField
          label="Keep fresh"
          unit="mL"
          value={fields.keepOwn}
          onChange={(keepOwn) => change({ keepOwn })}
          error={wrong('keepOwn')}
        />
      )}
    </>
  )
}
