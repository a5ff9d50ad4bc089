/** A time on the clock of the wall, without a day: `HH:mm`, or empty. */
import { type Picked, Picker } from './Picker.tsx'

export const ClockField = (asked: Picked) => (
  <Picker {...asked} type="time" drawing="M2.5 10a7.5 7.5 0 1 0 15 0 7.5 7.5 0 1 0-15 0M10 5.5V10l3 2" />
)
