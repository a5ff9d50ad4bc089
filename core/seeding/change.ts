/** A plan written again before the pumps go off: whether it still may be, and what must be switched on again whatever it says. */
import type { EquipmentDescribed } from './facts.ts'
import { isFlowOff, type RunNow } from './run.ts'
import type { Run } from './state.ts'
import { readStep } from './steps.ts'

/** Until a pump is ticked off, something is poured or the night is stopped: from then on the plan stands as it is. */
export const planMayChange = ({ is, run, steps }: RunNow): boolean =>
  (is === 'planned' || is === 'begun') &&
  run.pours.length === 0 &&
  !steps.some(({ step, done }) => done !== undefined && isFlowOff(step))

/**
 * What runs on a tank, and among what stops whatever is ticked off in this run: though it would not stop by now, or is gone
 * from the list, it is asked for in the morning.
 * @param described in the order they happened
 */
export const withSwitchedOff = (
  { devices }: EquipmentDescribed,
  run: Pick<Run, 'done'>,
  described: readonly EquipmentDescribed[],
): EquipmentDescribed['devices'] => {
  const off = new Set(
    [...run.done.keys()].flatMap((step) => {
      const { does, key } = readStep(step) ?? {}
      return key !== undefined && (does === 'off' || does === 'out') ? [key] : []
    }),
  )
  const here = devices.map((device) => (off.has(device.key) ? { ...device, stops: true } : device))
  const gone = [...off].flatMap((key) => {
    if (devices.some((device) => device.key === key)) return []
    const known = described.flatMap((each) => each.devices).findLast((device) => device.key === key)
    return known ? [{ ...known, stops: true }] : []
  })
  return [...here, ...gone]
}
