/** How many live bottles, where to, and when once more. */
import {
  litres,
  type Needed,
  type NeededRefusal,
  nightOf,
  notePodHunters,
  podHuntersAt,
  type Result,
  reachRange,
  usualSplit,
  type WaterPlace,
} from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Facts } from '../../parts/Facts.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Section } from '../../parts/Section.tsx'
import { about } from '../../words/numbers.ts'
import { neededWords, poursWords, reseedWords } from '../../words/seeding.ts'
import { seedingRefusal } from '../../words/seedingRefusals.ts'
import type { BeforeFields } from './beforeFields.ts'
import type { OfTank } from './ofTank.ts'
import type { Gathered } from './reading.ts'
import { placed, useSeeding } from './useSeeding.ts'
import { WholeForm } from './WholeForm.tsx'

type HowManyProps = OfTank & {
  readonly fields: BeforeFields
  readonly change: (fields: Partial<BeforeFields>) => void
  readonly needed: Result<Needed, NeededRefusal> | undefined
  readonly places: readonly WaterPlace[]
  readonly found: Gathered
}

export const HowMany = ({ tank, reading, fields, change, needed, places, found }: HowManyProps) => {
  const { world, now, today } = reading
  const act = useSeeding(reading)
  const hunters = podHuntersAt(world, tank.tank, now)?.there
  const trouble = found.find(({ at }) => at === 'reach')?.refusal ?? (needed && !needed.ok ? needed.refusal : undefined)
  const split = needed?.ok ? usualSplit(needed.value.bottles, places) : []
  return (
    <Section title="How many bottles?">
      {needed?.ok && (
        <Facts
          facts={[
            { term: 'Live bottles', fact: neededWords(needed.value) },
            ...(split.length > 1 ? [{ term: 'Where to', fact: poursWords(split) }] : []),
          ]}
        />
      )}
      <p>{reseedWords(nightOf(now, tank), today)}</p>
      <Choice
        label="Are there fish that hunt them?"
        hint="Mandarins, wrasses and the like: then twice as many."
        options={[
          { value: 'yes', label: 'Yes' },
          { value: 'no', label: 'No' },
        ]}
        value={hunters === undefined ? null : hunters ? 'yes' : 'no'}
        onChange={(there) =>
          void act.send((fresh, { now: at }) =>
            placed(notePodHunters(fresh, { tank: tank.tank, there: there === 'yes' }, at)),
          )
        }
      />
      <WholeForm act={act} />
      <MoreExact label="How much water one bottle seeds" open={trouble !== undefined}>
        <NumberField
          label="How much water does one bottle seed?"
          hint={`${reachRange.least} to ${reachRange.most} US gallons is usual, ${about(litres({ value: reachRange.least, unit: 'usGal' }))} to ${about(litres({ value: reachRange.most, unit: 'usGal' }))} litres. Common practice, without a source.`}
          unit="US gallons"
          value={fields.reach}
          onChange={(reach) => change({ reach })}
          error={trouble && seedingRefusal(trouble, reading)}
        />
      </MoreExact>
    </Section>
  )
}
