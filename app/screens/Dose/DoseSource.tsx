/** Where it came from, and how much of it was taken. */
import { comesFrom, keeping, keptIn, type PlanMade, type Source } from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { CountField } from '../../parts/CountField.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { sourceHint, sourceName } from '../../words/dose.ts'
import { foodName } from '../../words/names.ts'
import { asideWords } from '../../words/trouble.ts'
import type { Reading } from '../useReading.ts'
import { type DoseField, type DoseFields, noSource, type Part, sourceIn, sourcesFor } from './doseFields.ts'

export type DosePartProps = {
  readonly fields: DoseFields
  readonly change: (fields: Partial<DoseFields>) => void
  readonly plan: PlanMade
  readonly reading: Reading
  readonly wrong: (field: DoseField) => string | undefined
}

const partOptions: readonly { readonly value: Part; readonly label: string }[] = [
  { value: 'all', label: 'All of it' },
  { value: 'threeQuarters', label: 'Three quarters' },
  { value: 'half', label: 'Half' },
  { value: 'quarter', label: 'A quarter' },
]

export const DoseSource = ({ fields, change, plan, reading, wrong }: DosePartProps) => {
  const { world, now } = reading
  const all = sourcesFor(plan, world, now)
  const chosen = sourceIn(fields, all)?.source
  const severalFoods = new Set(all.map(({ food }) => food)).size > 1
  const option = ({ food, source }: (typeof all)[number]): { value: string; label: string; hint: string } => ({
    value: comesFrom(source),
    // A bottle says what is in it by itself.
    label: `${sourceName(source, world, now)}${severalFoods && source.from === 'portions' ? `: ${foodName(world, food, now)}` : ''}`,
    hint: hintOf(source, reading),
  })
  return (
    <>
      <Choice
        label="Where did it come from?"
        options={[...all.map(option), { value: noSource, label: 'Something not on record' }]}
        value={chosen ? fields.source : fields.source === '' ? null : noSource}
        // What she said of the amounts was said of another source.
        onChange={(source) => change({ source, amounts: {} })}
        error={wrong('source')}
      />
      {chosen?.from === 'portions' && (
        <>
          <CountField
            label="How many portions were taken?"
            min={1}
            value={fields.count ?? null}
            onChange={(count) => change({ count: count ?? undefined, amounts: {} })}
            error={wrong('count')}
          />
          <Choice
            label="How much of that reached the water?"
            hint="The rest was thrown away: what has thawed is not frozen again."
            options={partOptions}
            // An amount typed over the share is no part of these: none of them is true then.
            value={Object.keys(fields.amounts).length > 0 ? null : fields.part}
            onChange={(part) => change({ part, amounts: {} })}
          />
        </>
      )}
      {chosen?.from === 'bottle' && (
        <NumberField
          label="How much was poured?"
          unit="mL"
          value={fields.poured}
          onChange={(poured) => change({ poured, amounts: {} })}
          error={wrong('poured')}
        />
      )}
    </>
  )
}

/** How it keeps; set aside, why. */
const hintOf = (source: Source, reading: Reading): string => {
  const { world, today } = reading
  const thing = source.from === 'bottle' ? world.bottles.get(source.bottle) : world.lots.get(source.lot)
  const door = thing ? keptIn(thing) : 'freezer'
  const aside = thing?.aside ? `; ${asideWords(thing.aside, reading)}` : ''
  return `${sourceHint(source, keeping(source.lastGood, today, door), reading)}${aside}`
}
