/** Which tanks it reached, and what each had of it. */
import type { TankDescribed } from '../../../core/index.ts'
import { NumberField } from '../../parts/NumberField.tsx'
import { Picks } from '../../parts/Picks.tsx'
import type { DosePartProps } from './DoseSource.tsx'
import { noSource, offered, sourceIn, sourcesFor } from './doseFields.ts'
import { offeredIn, tanksIn } from './readDose.ts'

export const DoseTanks = ({ fields, change, wrong, tanks }: DosePartProps & { tanks: readonly TankDescribed[] }) =>
  tanks.length < 2 ? null : (
    <Picks
      label="Which tanks did it reach?"
      hint="Several share it, in one act."
      options={tanks.map(({ tank, name }) => ({ value: tank, label: name }))}
      values={fields.tanks}
      onChange={(chosen) => change({ tanks: chosen, amounts: {} })}
      error={wrong('tanks')}
    />
  )

export const DoseAmounts = ({ fields, change, plan, reading, wrong }: DosePartProps) => {
  const { world, now } = reading
  const chosen = tanksIn(fields, world, now)
  const source = sourceIn(fields, sourcesFor(plan, world, now))?.source
  // What was poured into one tank is what reached it; it need not be said twice.
  if (chosen.length === 1 && source?.from === 'bottle' && fields.source !== noSource) return null
  const shares = offeredIn(fields, plan, world, now)
  return chosen.map(({ tank, name }) => (
    <NumberField
      key={tank}
      label={`What reached ${name}`}
      hint={chosen.length > 1 && shares.length > 0 ? 'Shared by the water in each.' : undefined}
      unit="mL"
      value={fields.amounts[tank] ?? offered(tank, shares)}
      onChange={(amount) => change({ amounts: { ...fields.amounts, [tank]: amount } })}
      error={wrong(`amount/${tank}`)}
    />
  ))
}
