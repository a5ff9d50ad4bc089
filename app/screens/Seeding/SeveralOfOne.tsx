/** Two return pumps, three wave pumps: each by itself, and by a name if she likes. Folded away where there is one of each. */
import { type DeviceSort, mostOfOneSort, whichOf } from '../../../core/index.ts'
import { LinkButton } from '../../parts/Actions.tsx'
import { Field } from '../../parts/Field.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { sortOption } from '../../words/seeding.ts'
import { bare, deviceName } from '../../words/steps.ts'
import { type DeviceFields, devicesOf, type EquipmentFields, ofSort, oneMore } from './equipmentFields.ts'

type SeveralProps = {
  readonly fields: EquipmentFields
  readonly change: (fields: Partial<EquipmentFields>) => void
  /** Every key this tank ever had. */
  readonly had: readonly string[]
}

/** A name stands in the middle of a sentence. Our own judgement. */
const longestName = 40

export const SeveralOfOne = ({ fields, change, had }: SeveralProps) => {
  const several = fields.sorts.some((sort) => ofSort(fields, sort).length > 1)
  return (
    <MoreExact label="More than one of a sort" open={several}>
      <p>Each goes off and on by itself, and by its name in the night.</p>
      <Lines>
        {fields.sorts.map((sort) => (
          <OneSort key={sort} sort={sort} fields={fields} change={change} had={had} />
        ))}
      </Lines>
    </MoreExact>
  )
}

const OneSort = ({ sort, fields, change, had }: SeveralProps & { readonly sort: DeviceSort }) => {
  const its = ofSort(fields, sort)
  const { label } = sortOption(sort)
  const several = its.length > 1
  const with_ = (key: string, changed: Partial<DeviceFields>) =>
    change({ devices: fields.devices.map((each) => (each.key === key ? { ...each, ...changed } : each)) })
  return (
    <Line
      end={
        its.length < mostOfOneSort && (
          <LinkButton onAct={() => change({ devices: oneMore(fields, sort, had) })}>
            One more<span className="for-ears">: {label}</span>
          </LinkButton>
        )
      }
      below={
        (several || its.some(({ name }) => name !== '')) &&
        its.map(({ key, name }, place) => {
          const which = whichOf(devicesOf({ ...fields, devices: nameless(fields.devices) }), key)
          const one = bare(deviceName(key, () => which))
          return (
            <div className="several" key={key}>
              <Field
                label={`Name of ${one}`}
                hint={place === 0 ? '“Left”, “over the overflow”. May be left empty.' : undefined}
                longest={longestName}
                value={name}
                onChange={(typed) => with_(key, { name: typed })}
              />
              {several && (
                <LinkButton onAct={() => change({ devices: fields.devices.filter((each) => each.key !== key) })}>
                  Take it away<span className="for-ears">: {one}</span>
                </LinkButton>
              )}
            </div>
          )
        })
      }
    >
      {label}
    </Line>
  )
}

const nameless = (devices: readonly DeviceFields[]) => devices.map((each) => ({ ...each, name: '' }))
