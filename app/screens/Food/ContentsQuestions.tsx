/** What a food’s maker says is in it: only for an upper estimate, should far too much of it ever go in. */
import { Choice } from '../../parts/Choice.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import type { KindQuestionsProps } from './KindForm.tsx'

export const ContentsQuestions = ({ fields, change, wrong }: KindQuestionsProps) => (
  <>
    <Choice
      label="What does its label say is in it?"
      hint="Asked for one thing only: what it adds to the water if far too much goes in."
      options={[
        { value: 'notKnown', label: 'I don’t know' },
        { value: 'dry', label: 'Dry matter' },
        { value: 'cells', label: 'Cells' },
      ]}
      value={fields.contains}
      onChange={(contains) => change({ contains })}
    />
    {fields.contains === 'dry' && (
      <NumberField
        label="Dry matter in a millilitre"
        hint="Per cent of solids, divided by 100, is near enough."
        unit="g"
        value={fields.dry}
        onChange={(dry) => change({ dry })}
        error={wrong('dry')}
      />
    )}
    {fields.contains === 'cells' && (
      <>
        <NumberField
          label="Cells in a millilitre"
          unit="million"
          value={fields.cells}
          onChange={(cells) => change({ cells })}
          error={wrong('cells')}
        />
        <NumberField
          label="What one cell weighs, dry"
          hint="By its kind: from about 6 pg for the smallest to some 300 for large ones."
          unit="pg"
          value={fields.cellPicograms}
          onChange={(cellPicograms) => change({ cellPicograms })}
          error={wrong('cellPicograms')}
        />
      </>
    )}
    {fields.contains !== 'notKnown' && (
      <>
        <NumberField
          label="Nitrogen in the dry matter"
          hint="Leave it empty if you don’t know: usual shares are taken, from 6.3 to 9.2 %."
          unit="%"
          value={fields.nitrogen}
          onChange={(nitrogen) => change({ nitrogen })}
          error={wrong('nitrogen')}
        />
        <NumberField
          label="Phosphorus in the dry matter"
          hint="Left empty, from 0.9 to 1.3 %."
          unit="%"
          value={fields.phosphorus}
          onChange={(phosphorus) => change({ phosphorus })}
          error={wrong('phosphorus')}
        />
      </>
    )}
  </>
)
