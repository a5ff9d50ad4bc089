/** Is the water ready: a few questions, and what stands in the way as a list. Never a score. */
import type { Gap } from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Quiet } from '../../parts/Quiet.tsx'
import { Section } from '../../parts/Section.tsx'
import { gapWords, notKnownWords, readyHabit } from '../../words/seeding.ts'
import { seedingRefusal } from '../../words/seedingRefusals.ts'
import type { Reading } from '../useReading.ts'
import type { BeforeFields } from './beforeFields.ts'
import type { Gathered } from './reading.ts'

type ReadyProps = {
  readonly fields: BeforeFields
  readonly change: (fields: Partial<BeforeFields>) => void
  readonly found: Gathered
  readonly gaps: readonly Gap[]
  readonly reading: Reading
}

const numbers = [
  { at: 'ammonia', label: 'Ammonia', unit: 'mg/L', hint: undefined },
  { at: 'nitrite', label: 'Nitrite', unit: 'mg/L', hint: undefined },
  { at: 'celsius', label: 'Temperature', unit: '°C', hint: undefined },
  { at: 'salinity', label: 'Salt', unit: '‰', hint: 'In parts per thousand; a reef is near 35.' },
] as const

export const Ready = ({ fields, change, found, gaps, reading }: ReadyProps) => {
  const open = notKnownWords(gaps)
  const real = gaps.flatMap((gap) => (gap.gap === 'notKnown' ? [] : [gapWords(gap)]))
  const wrong = (field: string) => {
    const trouble = found.find(({ at }) => at === field)
    return trouble && seedingRefusal(trouble.refusal, reading)
  }
  return (
    <Section title="Is the water ready?">
      {real.length > 0 && (
        <Lines>
          {real.map((says) => (
            <Line key={says}>{says}</Line>
          ))}
        </Lines>
      )}
      <p>{open ?? (real.length === 0 ? 'Nothing stands in the way.' : 'Everything else is in order.')}</p>
      <Quiet>{readyHabit}</Quiet>
      <MoreExact label="What the tests say">
        {numbers.map(({ at, label, unit, hint }) => (
          <NumberField
            key={at}
            label={label}
            hint={hint}
            unit={unit}
            value={fields[at]}
            onChange={(typed) => change({ [at]: typed })}
            error={wrong(at)}
          />
        ))}
        <Choice
          label="Was there ever copper in it?"
          options={[
            { value: 'never', label: 'Never' },
            { value: 'once', label: 'Once' },
            { value: 'inTheWater', label: 'It is in the water now' },
          ]}
          value={fields.copper === 'notSaid' ? null : fields.copper}
          onChange={(copper) => change({ copper })}
        />
        {fields.copper === 'once' && (
          <Choice
            label="Filtered over carbon since, and tested?"
            options={[
              { value: 'none', label: 'Yes, there is none' },
              { value: 'notYet', label: 'Not yet' },
            ]}
            value={fields.copperTested === 'notSaid' ? null : fields.copperTested}
            onChange={(copperTested) => change({ copperTested })}
          />
        )}
        <Choice
          label="Is there something to graze?"
          hint="A film on the glass, rubble, some algae."
          options={[
            { value: 'yes', label: 'Yes' },
            { value: 'no', label: 'Bare and new' },
          ]}
          value={fields.film === 'notSaid' ? null : fields.film}
          onChange={(film) => change({ film })}
        />
      </MoreExact>
    </Section>
  )
}
