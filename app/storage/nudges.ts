/** Which nudges this phone has shown. */
import { type Moment, moment, ok, type Result } from '../../core/index.ts'
import type { StorageRefusal } from './connection.ts'
import type { Device, NudgeShown } from './device.ts'
import { writeStrictly } from './transaction.ts'

export const shownNudges = async (device: Device): Promise<Result<ReadonlySet<string>, StorageRefusal>> => {
  const keys = await device.use((db) => db.getAllKeys('nudges'))
  return keys.ok ? ok(new Set(keys.value)) : keys
}

/** Days a record is kept. Its night deserves no nudge after three hours; the rest is for a clock put right meanwhile. */
const keptDays = 60
const keptSince = (now: Moment): Moment => moment(now - keptDays * 24 * 60 * 60_000)

/**
 * True for the one who may show it, however many ask at the same time. What is long past goes with the same write.
 * @param key its own name, and those of what it carries: none of them is to be said again
 */
export const claimNudge = (
  device: Device,
  [key, ...carried]: readonly [string, ...string[]],
  shown: NudgeShown,
): Promise<Result<boolean, StorageRefusal>> =>
  device.use(async (db) => {
    try {
      await writeStrictly(db, ['nudges'], async (tx) => {
        const store = tx.objectStore('nudges')
        await store.add(shown, key)
        await Promise.all(carried.map((name) => store.put(shown, name)))
        const since = keptSince(shown.shownAt)
        for (let each = await store.openCursor(); each; each = await each.continue())
          if (each.value.shownAt < since) await each.delete()
      })
      return true
    } catch (error) {
      if (error instanceof DOMException && error.name === 'ConstraintError') return false
      throw error
    }
  })

export type ShownLast = Pick<NudgeShown, 'shownAt' | 'via'>

/** The last one that was shown on this phone, and what woke it. */
export const lastShown = async (device: Device): Promise<Result<ShownLast | undefined, StorageRefusal>> => {
  const all = await device.use((db) => db.getAll('nudges'))
  if (!all.ok) return all
  return ok(
    all.value.reduce<NudgeShown | undefined>(
      (last, one) => (last && last.shownAt >= one.shownAt ? last : one),
      undefined,
    ),
  )
}
