/** How long it keeps, from when, and whether it wants shaking. */
import { Choice } from '../../parts/Choice.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { UnitNumberField } from '../../parts/UnitNumberField.tsx'
import type { KindQuestionsProps } from './KindForm.tsx'
import { mayFreeze } from './readKind.ts'

const units = [
  { value: 'days' as const, label: 'days' },
  { value: 'months' as const, label: 'months' },
]

export const KeepingQuestions = ({ fields, change, wrong }: KindQuestionsProps) => (
  <>
    <UnitNumberField
      label="Keeps in the fridge for"
      value={fields.life}
      onChange={(life) => change({ life })}
      error={wrong('life')}
      unitLabel="Fridge life in"
      units={units}
      unit={fields.lifeUnit}
      onUnit={(lifeUnit) => change({ lifeUnit })}
    />
    <Choice
      label="Counted from"
      options={[
        { value: 'arrival', label: 'The day it came' },
        { value: 'bottling', label: 'The day it was bottled' },
        { value: 'opening', label: 'The day it is opened' },
      ]}
      value={fields.countsFrom}
      onChange={(countsFrom) => change({ countsFrom })}
    />
    {fields.sort === 'freshNonViable' && (
      <Choice
        label="May it be frozen?"
        options={[
          { value: 'yes', label: 'Yes, its label promises a life in the freezer' },
          { value: 'no', label: 'No, or the label does not say' },
        ]}
        value={fields.freezes}
        onChange={(freezes) => change({ freezes })}
      />
    )}
    {mayFreeze(fields) && (
      <UnitNumberField
        label="Keeps in the freezer for"
        value={fields.freezerLife}
        onChange={(freezerLife) => change({ freezerLife })}
        error={wrong('freezerLife')}
        unitLabel="Freezer life in"
        units={units}
        unit={fields.freezerUnit}
        onUnit={(freezerUnit) => change({ freezerUnit })}
      />
    )}
    <Choice
      label="Does it want shaking?"
      options={[
        { value: 'yes', label: 'Yes, it settles' },
        { value: 'no', label: 'No' },
      ]}
      value={fields.shakes}
      onChange={(shakes) => change({ shakes })}
    />
    {fields.shakes === 'yes' && (
      <NumberField
        label="Shake it every"
        unit="hours"
        value={fields.shakeHours}
        onChange={(shakeHours) => change({ shakeHours })}
        error={wrong('shakeHours')}
      />
    )}
  </>
)
