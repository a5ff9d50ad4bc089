/** What a screen of one tank reads: hours and days are those at the tank. */
import { type TankDescribed, wallDay } from '../../../core/index.ts'
import type { Reading } from '../useReading.ts'

export type OfTank = { readonly tank: TankDescribed; readonly reading: Reading }

export const ofTank = (reading: Reading, { zone }: TankDescribed): Reading => ({
  ...reading,
  zone,
  today: wallDay(reading.now, zone),
})
