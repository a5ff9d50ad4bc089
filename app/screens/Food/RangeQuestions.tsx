/** The label's range, and how often. */
import { NumberField } from '../../parts/NumberField.tsx'
import { UnitNumberField } from '../../parts/UnitNumberField.tsx'
import { waterUnitOptions } from '../../words/numbers.ts'
import type { KindQuestionsProps } from './KindForm.tsx'

export const RangeQuestions = ({ fields, change, wrong }: KindQuestionsProps) => (
  <>
    <p className="shelf-facts">
      1 to 2 mL per 200 US gallons every other night is common practice. Your label’s own figures win.
    </p>
    <div className="pair">
      <NumberField
        label="One dose, from"
        unit="mL"
        value={fields.low}
        onChange={(low) => change({ low })}
        error={wrong('low')}
      />
      <NumberField
        label="to"
        unit="mL"
        value={fields.high}
        onChange={(high) => change({ high })}
        error={wrong('high')}
      />
    </div>
    <UnitNumberField
      label="for so much water"
      value={fields.per}
      onChange={(per) => change({ per })}
      error={wrong('per')}
      unitLabel="Measured in"
      units={waterUnitOptions}
      unit={fields.perUnit}
      onUnit={(perUnit) => change({ perUnit })}
    />
    <NumberField
      label="Nights from one dose to the next"
      hint="2 is every other night."
      value={fields.everyNights}
      onChange={(everyNights) => change({ everyNights })}
      error={wrong('everyNights')}
    />
  </>
)
