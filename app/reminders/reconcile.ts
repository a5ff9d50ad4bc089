/**
 * Shows what deserves a nudge by now, once. Whoever calls, and however often, comes to the same: the book is read afresh,
 * and the record of the night is on disk before anything is shown, so that no tab and no worker shows it a second time.
 */
import { fold, type Moment, nudges, ok, type Result } from '../../core/index.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { type Device, readMatters } from '../storage/device.ts'
import { nothingSeen, readAfter } from '../storage/ledger.ts'
import { claimNudge, shownNudges } from '../storage/nudges.ts'
import type { Ledger } from '../storage/schema.ts'
import { nudgeWords } from '../words/nudges.ts'
import type { Channel } from './channel.ts'

export type Reach = {
  readonly now: () => Moment
  readonly ledger: Ledger
  readonly device: Device
  readonly channels: readonly Channel[]
}

/** How many were shown. */
export const reconcile = async ({ now, ledger, device, channels }: Reach): Promise<Result<number, StorageRefusal>> => {
  const open = channels.filter((channel) => channel.open())
  if (open.length === 0) return ok(0)
  const matters = await readMatters(device)
  if (!matters.ok) return matters
  if (!matters.value.nudge) return ok(0)
  const [shown, book] = await Promise.all([shownNudges(device), readAfter(ledger, nothingSeen)])
  if (!shown.ok) return shown
  if (!book.ok) return book
  const world = fold(book.value.entries)
  const at = now()
  let count = 0
  for (const nudge of nudges(world, at, shown.value)) {
    const { key, plannedAt } = nudge
    const via = open.map(({ name }) => name).join(', ')
    const claimed = await claimNudge(device, key, { plannedAt, shownAt: at, via })
    if (!claimed.ok) return claimed
    if (!claimed.value) continue
    const telling = nudgeWords(nudge, world, at)
    // Where one cannot be shown the next tank's still can.
    const shows = await Promise.allSettled(open.map((channel) => channel.show(telling)))
    if (shows.some(({ status }) => status === 'fulfilled')) count++
  }
  return ok(count)
}
