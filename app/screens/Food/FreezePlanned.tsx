/** How many portions a bottle will make, and in how many trays. */
import { freezingWindow, lastGoodFrozen, type Result, usualWells } from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Section } from '../../parts/Section.tsx'
import { dayInFull } from '../../words/dates.ts'
import { fieldText } from '../../words/foodRefusals.ts'
import { batchWords } from '../../words/freezing.ts'
import { millilitres } from '../../words/numbers.ts'
import { useReading } from '../useReading.ts'
import { FitLines } from './FitLines.tsx'
import type { FreezeFields } from './freezeFields.ts'
import { KeepFresh } from './KeepFresh.tsx'
import { type FreezeOf, type PlanRead, proposed } from './readFreezing.ts'
import { TrayQuestions } from './TrayQuestions.tsx'
import type { Trouble } from './useAct.ts'

export type FreezePlannedProps = {
  readonly of: FreezeOf
  readonly read: Result<PlanRead, Trouble>
  readonly fields: FreezeFields
  readonly change: (fields: Partial<FreezeFields>) => void
}

const wells = [
  ...usualWells.map((well) => ({ value: String(well), label: millilitres(well) })),
  { value: 'own', label: 'Another size' },
]

export const FreezePlanned = ({ of, read, fields, change }: FreezePlannedProps) => {
  const reading = useReading()
  const wrong = (at: string) =>
    !read.ok && read.refusal.at === at ? fieldText(read.refusal.refusal, reading) : undefined
  const { bottle, food, today } = of
  const late = freezingWindow(bottle, food, today).is === 'over'
  const frozenUntil = lastGoodFrozen({ frozenOn: today, late }, food)
  return (
    <Section title="The plan">
      {read.ok && (
        <>
          <p>
            {batchWords(read.value.plan, read.value.owned)}
            {frozenUntil && ` Frozen today they are good until ${dayInFull(frozenUntil)}.`}
          </p>
          <FitLines each={read.value.portion} food={of.food.food} />
        </>
      )}
      <NumberField
        label="One portion"
        hint="Measured with the pipette; the well only has to be large enough."
        unit="mL"
        value={fields.portion ?? proposed(fields, of.world, of.food, of.now)}
        onChange={(portion) => change({ portion })}
        error={wrong('portion')}
      />
      <Choice
        label="How much does one well hold?"
        options={wells}
        value={fields.well}
        onChange={(well) => change({ well })}
      />
      {fields.well === 'own' && (
        <NumberField
          label="One well holds"
          unit="mL"
          value={fields.ownWell}
          onChange={(ownWell) => change({ ownWell })}
          error={wrong('ownWell')}
        />
      )}
      <MoreExact
        label={`Trays of ${fields.rows} by ${fields.columns}, and what to keep fresh`}
        open={!read.ok && ['rows', 'columns', 'traysOwned', 'keep', 'keepOwn'].includes(read.refusal.at)}
      >
        <TrayQuestions fields={fields} change={change} wrong={wrong} />
        <NumberField
          label="How many such trays do you have?"
          hint="Leave it empty if there are enough."
          value={fields.traysOwned}
          onChange={(traysOwned) => change({ traysOwned })}
          error={wrong('traysOwned')}
        />
        <KeepFresh of={of} fields={fields} change={change} wrong={wrong} />
      </MoreExact>
    </Section>
  )
}
