/** Looking for one thing in a long book: a day, a kind of entry, a tank, or all three at once. */
import { isDay, type TankId, type World } from '../../../core/index.ts'
import { Chips } from '../../parts/Chips.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { dayEcho } from '../../words/dates.ts'
import { type Group, groupOptions } from '../../words/lookingUp.ts'
import { tankName } from '../../words/names.ts'
import type { Reading } from '../useReading.ts'

export type Looking = { readonly upTo: string; readonly group: Group | null; readonly tank: TankId | null }
export const everything: Looking = { upTo: '', group: null, tank: null }
export const isEverything = ({ upTo, group, tank }: Looking): boolean => !isDay(upTo) && group === null && tank === null

type LookUpProps = {
  readonly looking: Looking
  readonly reading: Reading
  readonly onChange: (looking: Looking) => void
}

export const LookUp = ({ looking, reading, onChange }: LookUpProps) => {
  const { world, now } = reading
  const { upTo, group, tank } = looking
  const tanks = tanksEver(world).map((value) => ({ value, label: tankName(world, value, now) }))
  return (
    <MoreExact label="Look something up" open={!isEverything(looking)}>
      <DayField
        label="From this day back"
        value={upTo}
        onChange={(typed) => onChange({ ...looking, upTo: typed })}
        echo={dayEcho(upTo)}
      />
      <Chips
        label="Only these"
        options={groupOptions}
        value={group}
        onChange={(chosen) => onChange({ ...looking, group: chosen })}
      />
      {tanks.length > 1 && (
        <Chips
          label="Only this tank"
          options={tanks}
          value={tank}
          onChange={(chosen) => onChange({ ...looking, tank: chosen })}
        />
      )}
    </MoreExact>
  )
}

/** Those no longer kept have a past to look up. */
const tanksEver = ({ tanks }: World): readonly TankId[] => [...tanks.keys()]
