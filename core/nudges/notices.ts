/** What else there is to say of an evening, each once: it rides along with the nudge for the dose. */
import { addDays, type Day, daysBetween } from '../basis/days.ts'
import type { BottleId, FoodId, LotId, TankId } from '../basis/ids.ts'
import { type Moment, wallDay } from '../basis/zones.ts'
import { lasts } from '../dosing/lasts.ts'
import { freezingWindow } from '../food/freezing.ts'
import { foodAt, foodsAt } from '../food/state.ts'
import type { History } from '../ledger/history.ts'
import type { SeedingState } from '../seeding/state.ts'
import { type LampAsk, lampAsk } from '../tank/lamp.ts'
import { tanksAt } from '../tank/state.ts'
import { backupOverdue } from '../world/backup.ts'
import type { Fact } from '../world/facts.ts'
import type { State } from './doses.ts'
import type { Wishes } from './wishes.ts'

export type Notice = { readonly key: string } & (
  | { readonly about: 'freezeBy'; readonly bottle: BottleId; readonly until: Day; readonly unused: number }
  | { readonly about: 'useSoon'; readonly lot: LotId; readonly until: Day; readonly unused: number }
  | { readonly about: 'orderBy'; readonly food: FoodId; readonly orderBy: Day; readonly bareNight: Day }
  | { readonly about: 'clocks'; readonly ask: LampAsk }
  | { readonly about: 'backup' }
  | { readonly about: 'calendarEnds'; readonly until: Day }
)

/** What this phone alone knows. */
export type Phone = {
  readonly lastBackup?: Moment | undefined
  /** The last night in the calendar file she took, if she took one. */
  readonly calendarUntil?: Day | undefined
}
/** With its history: a backup is due by when the book was begun. */
export type Told = State & SeedingState & { readonly history: History<Fact> }

/** Days before a bottle's last good day. Common practice, no source. */
const freezeDays = [3, 14] as const
/** Days before the last good day of portions that will not all be used. Common practice, no source. */
const useSoonDays = 60
/** Days a parcel takes, and to spare. Our own judgement. */
export const leadDays = 7
export const cushionDays = 7
/** Days before the calendar's last night. */
export const renewDays = 7

/** Everything there is to say on the day of a moment, said before or not. */
export const noticesOf = (state: Told, now: Moment, { zone }: Wishes, phone: Phone): readonly Notice[] => {
  const today = wallDay(now, zone)
  const notices: Notice[] = []
  for (const { food } of foodsAt(state, now)) notices.push(...foodNotices(state, food, now, today))
  for (const tank of tanksAt(state, now)) {
    const ask = lampAsk(state, tank, now)
    if (ask?.change) notices.push({ key: clocksKey(tank.tank, ask.change.day), about: 'clocks', ask })
  }
  const { lastBackup, calendarUntil } = phone
  if (backupOverdue(state, lastBackup, { today, zone }))
    notices.push({ key: `backup/${today.slice(0, 7)}`, about: 'backup' })
  if (calendarUntil && endsSoon(calendarUntil, today))
    notices.push({ key: `calendarEnds/${calendarUntil}`, about: 'calendarEnds', until: calendarUntil })
  return notices
}
/** Within a week of its last night a calendar wants a new file; long after it, nobody is reminded of it any more. */
export const endsSoon = (lastNight: Day, today: Day): boolean => {
  const days = daysBetween(today, lastNight)
  return days <= renewDays && days >= -renewDays
}
const clocksKey = (tank: TankId, day: Day) => `clocks/${tank}/${day}`

/** Only what will not be used is worth a word: food that will be eaten in time is nobody's worry. */
const foodNotices = (state: State, id: FoodId, now: Moment, today: Day): readonly Notice[] => {
  const food = foodAt(state, id, now)
  const lasting = lasts(state, id, now)
  if (!food || !lasting) return []
  const { bareNight, wasted } = lasting
  const notices: Notice[] = []
  for (const source of wasted) {
    if (source.from === 'portions') {
      const until = source.lastGood
      const days = until && daysBetween(today, until)
      if (until && days !== undefined && days >= 0 && days <= useSoonDays)
        notices.push({
          key: `useSoon/${source.lot}/${until}`,
          about: 'useSoon',
          lot: source.lot,
          until,
          unused: source.left,
        })
      continue
    }
    const bottle = state.bottles.get(source.bottle)
    const window = bottle && freezingWindow(bottle, food, today)
    const stage = window?.is === 'open' ? freezeDays.find((days) => window.days <= days) : undefined
    if (window?.is === 'open' && stage !== undefined)
      notices.push({
        key: `freezeBy/${source.bottle}/${window.until}/${stage}`,
        about: 'freezeBy',
        bottle: source.bottle,
        until: window.until,
        unused: source.left,
      })
  }
  const orderBy = addDays(bareNight, -leadDays - cushionDays)
  // By the month: a bare night that moves by a day is not another piece of news.
  if (orderBy <= today)
    notices.push({ key: `orderBy/${id}/${bareNight.slice(0, 7)}`, about: 'orderBy', food: id, orderBy, bareNight })
  return notices
}
