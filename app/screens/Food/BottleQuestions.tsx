/** The questions about a bottle. Only the first few stand open; the rest have answers that are usually right. */
import { Choice } from '../../parts/Choice.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { UnitNumberField } from '../../parts/UnitNumberField.tsx'
import { bottleUnitOptions } from '../../words/numbers.ts'
import { BottleMore } from './BottleMore.tsx'
import type { BottleFields } from './bottleFields.ts'
import type { Act } from './useAct.ts'

export type BottleQuestionsProps = {
  readonly fields: BottleFields
  readonly change: (fields: Partial<BottleFields>) => void
  readonly act: Act
  /** The bottle is on record: what was in it then is asked, not what is left. */
  readonly mending?: boolean
  /** It is opened for its price. */
  readonly priceFirst?: boolean
}

export const BottleQuestions = ({ fields, change, act, mending = false, priceFirst = false }: BottleQuestionsProps) => (
  <>
    <UnitNumberField
      label="How large is the bottle?"
      value={fields.size}
      onChange={(size) => change({ size })}
      error={act.wrong('size')}
      unitLabel="Measured in"
      units={bottleUnitOptions}
      unit={fields.unit}
      onUnit={(unit) => change({ unit })}
    />
    <Choice
      label="How full is it?"
      options={[
        { value: 'full', label: 'New and full' },
        { value: 'share', label: 'Begun already: a share of it is left' },
        { value: 'amount', label: 'Begun already: I know the mL left' },
      ]}
      value={fields.fullness}
      onChange={(fullness) => change({ fullness })}
      error={act.wrong('full')}
    />
    {fields.fullness === 'share' && (
      <NumberField
        label={mending ? 'About how much of it was there when it went on record?' : 'About how much of it is left?'}
        value={fields.share}
        unit="%"
        onChange={(share) => change({ share })}
        error={act.wrong('share')}
      />
    )}
    {fields.fullness === 'amount' && (
      <NumberField
        label={mending ? 'How much was in it when it went on record?' : 'How much is left?'}
        value={fields.amount}
        unit="mL"
        onChange={(amount) => change({ amount })}
        error={act.wrong('amount')}
      />
    )}
    <BottleMore fields={fields} change={change} act={act} mending={mending} priceFirst={priceFirst} />
  </>
)
