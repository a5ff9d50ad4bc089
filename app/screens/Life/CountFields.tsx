/** One number for each pane or millilitre, as it was counted. */
import { LinkButton } from '../../parts/Actions.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { countField, type CountFields as Fields } from './lifeFields.ts'
import type { LifeForm } from './useLifeForm.ts'

type CountFieldsProps = {
  readonly fields: Fields
  readonly onChange: (changed: Partial<Fields>) => void
  readonly form: LifeForm
  readonly label: (place: number) => string
  readonly more: string
}

/** More looks than these nobody takes in one sitting. Our own judgement. */
const mostLooks = 9

export const CountFields = ({ fields, onChange, form, label, more }: CountFieldsProps) => (
  <>
    <div className="life-counts">
      {fields.counts.map((count, place) => (
        <NumberField
          // biome-ignore lint/suspicious/noArrayIndexKey: the first pane stays the first
          key={place}
          label={label(place)}
          value={count}
          onChange={(typed) => onChange({ counts: fields.counts.map((each, i) => (i === place ? typed : each)) })}
          error={form.wrong(countField(place))}
        />
      ))}
    </div>
    {fields.counts.length < mostLooks && (
      <LinkButton onAct={() => onChange({ counts: [...fields.counts, ''] })}>{more}</LinkButton>
    )}
  </>
)

type SquareFieldsProps = Pick<CountFieldsProps, 'fields' | 'onChange' | 'form'>
export const SquareFields = ({ fields, onChange, form }: SquareFieldsProps) => (
  <div className="life-counts">
    <NumberField
      label="The square’s width"
      unit="cm"
      value={fields.width}
      onChange={(width) => onChange({ width })}
      error={form.wrong('width')}
    />
    <NumberField
      label="Its height"
      unit="cm"
      value={fields.height}
      onChange={(height) => onChange({ height })}
      error={form.wrong('height')}
    />
  </div>
)
