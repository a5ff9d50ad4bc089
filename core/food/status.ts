/** How near its last good day a thing is. "About two months" does not turn overnight. */
import { type Day, daysBetween } from '../basis/days.ts'
import type { Door } from './facts.ts'

export type Keeping =
  | { readonly is: 'good' | 'useSoon'; readonly days: number }
  | { readonly is: 'lastDay' }
  /** In the fridge, within a fortnight of its usual time: sniff and look. */
  | { readonly is: 'pastItsUsualTime'; readonly days: number }
  | { readonly is: 'past'; readonly days: number }
  | { readonly is: 'unknown' }

/** Days left at which a thing is to be used soon. Common practice, no source. */
const useSoonDays: Record<Door, number> = { fridge: 14, freezer: 60 }
export const sniffDays = 14

export const keeping = (lastGood: Day | undefined, today: Day, door: Door): Keeping => {
  if (!lastGood) return { is: 'unknown' }
  const days = daysBetween(today, lastGood)
  if (days > useSoonDays[door]) return { is: 'good', days }
  if (days > 0) return { is: 'useSoon', days }
  if (days === 0) return { is: 'lastDay' }
  return { is: door === 'fridge' && -days <= sniffDays ? 'pastItsUsualTime' : 'past', days: -days }
}
