/** What a screen of one tank reads: days and hours are those of its wall, wherever the phone or the other tanks are. */
import { type TankDescribed, wallDay } from '../../../core/index.ts'
import { type Reading, useReading } from '../useReading.ts'

export const useTankReading = ({ zone }: TankDescribed): Reading => {
  const reading = useReading()
  return { ...reading, zone, today: wallDay(reading.now, zone) }
}
