/** What may stay as it is: when water is taken out, how bottles are rinsed, what is in them and how salty. */
import { Choice } from '../../parts/Choice.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Picks } from '../../parts/Picks.tsx'
import { animalOptions, rinseOptions, waterOutOptions } from '../../words/seeding.ts'
import type { PlanFields } from './planFields.ts'
import type { Seeding } from './useSeeding.ts'

type PourFieldsProps = {
  readonly fields: PlanFields
  readonly change: (changed: Partial<PlanFields>) => void
  readonly act: Seeding
}
const inside = ['rinseEach', 'animals', 'tankSalt', 'bottleSalt']

export const PourFields = ({ fields, change, act }: PourFieldsProps) => (
  <MoreExact
    label="Water out, rinsing, salt, and what is in them"
    open={inside.some((field) => act.wrong(field) !== undefined)}
  >
    <Choice
      label="When is tank water taken out?"
      hint="As much as comes in with the bottles."
      options={waterOutOptions}
      value={fields.waterOut}
      onChange={(waterOut) => change({ waterOut })}
    />
    <Choice
      label="How are the bottles rinsed?"
      options={rinseOptions}
      value={fields.rinse}
      onChange={(rinse) => change({ rinse })}
    />
    {fields.rinse !== 'none' && (
      <NumberField
        label="How much for each bottle?"
        unit="mL"
        value={fields.rinseEach}
        onChange={(rinseEach) => change({ rinseEach })}
        error={act.wrong('rinseEach')}
      />
    )}
    <NumberField
      label="Salt of the water in the bottles"
      hint="Parts per thousand, as measured or on the label. Not known is left empty."
      unit="‰"
      value={fields.bottleSalt}
      onChange={(bottleSalt) => change({ bottleSalt })}
      error={act.wrong('bottleSalt')}
    />
    <NumberField
      label="Salt of the tank"
      hint="With both, what the pour does to it is reckoned."
      unit="‰"
      value={fields.tankSalt}
      onChange={(tankSalt) => change({ tankSalt })}
      error={act.wrong('tankSalt')}
    />
    <Picks
      label="What is in them?"
      options={animalOptions}
      values={fields.animals}
      onChange={(animals) => change({ animals })}
      error={act.wrong('animals')}
    />
  </MoreExact>
)
