/** Whether portions stay in their trays or lie loose. */
import { Choice } from '../../parts/Choice.tsx'
import type { TrayFields } from './trays.ts'

const options = [
  {
    value: 'trays' as const,
    label: 'In their trays',
    hint: 'Filled trays in a freezer bag; one portion is pushed out a night.',
  },
  { value: 'loose' as const, label: 'Loose in a bag' },
]

type KeptAsProps = {
  readonly fields: Pick<TrayFields, 'keptAs'>
  readonly onChange: (fields: Pick<TrayFields, 'keptAs'>) => void
}

export const KeptAs = ({ fields, onChange }: KeptAsProps) => (
  <Choice
    label="How are they kept?"
    options={options}
    value={fields.keptAs}
    onChange={(keptAs) => onChange({ keptAs })}
  />
)
