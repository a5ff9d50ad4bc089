/**
 * Shows what deserves a nudge by now, once. Whoever calls, and however often, comes to the same: the book is read afresh,
 * and the record of the night is on disk before anything is shown, so that no tab and no worker shows it a second time.
 */
import { fold, type Moment, nudges, ok, type Result, type World, type Zone } from '../../core/index.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { type Device, type DeviceMatters, readMatters } from '../storage/device.ts'
import { nothingSeen, readAfter } from '../storage/ledger.ts'
import { claimNudge, shownNudges } from '../storage/nudges.ts'
import type { Ledger } from '../storage/schema.ts'
import { nudgeWords } from '../words/nudges.ts'
import { phoneKnows, wishesOf } from './asked.ts'
import type { Channel } from './channel.ts'

export type Reach = {
  readonly now: () => Moment
  /** Where the phone is. */
  readonly zone: Zone
  readonly ledger: Ledger
  readonly device: Device
  readonly channels: readonly Channel[]
  /** What woke it, for the record. */
  readonly woken: string
}

/** The book and this phone's matters as they were found, and how many were shown. */
export type Reconciled = {
  readonly world: World
  readonly matters: Partial<DeviceMatters>
  readonly count: number
}

export const reconcile = async (reach: Reach): Promise<Result<Reconciled, StorageRefusal>> => {
  const { now, zone, ledger, device, channels, woken } = reach
  const [matters, shown, book] = await Promise.all([
    readMatters(device),
    shownNudges(device),
    readAfter(ledger, nothingSeen),
  ])
  if (!matters.ok) return matters
  if (!shown.ok) return shown
  if (!book.ok) return book
  const world = fold(book.value.entries)
  const open = channels.filter((channel) => channel.open())
  const found = { world, matters: matters.value }
  if (open.length === 0 || !matters.value.nudge) return ok({ ...found, count: 0 })
  const at = now()
  const { wishes, lastBackup, calendar } = matters.value
  const asked = { shown: shown.value, wishes: wishesOf(wishes, zone), phone: phoneKnows(lastBackup, calendar) }
  let count = 0
  for (const nudge of nudges(world, at, asked)) {
    const claimed = await claimNudge(device, nudge.claims, { plannedAt: nudge.plannedAt, shownAt: at, via: woken })
    if (!claimed.ok) return claimed
    if (!claimed.value) continue
    const telling = nudgeWords(nudge, world, at)
    // Where one cannot be shown the next one still can.
    const shows = await Promise.allSettled(open.map((channel) => channel.show(telling)))
    if (shows.some(({ status }) => status === 'fulfilled')) count++
  }
  return ok({ ...found, count })
}
