/** Which nudges this phone has shown. */
import { ok, type Result } from '../../core/index.ts'
import type { StorageRefusal } from './connection.ts'
import type { Device, NudgeShown } from './device.ts'
import { writeStrictly } from './transaction.ts'

export const shownNudges = async (device: Device): Promise<Result<ReadonlySet<string>, StorageRefusal>> => {
  const keys = await device.use((db) => db.getAllKeys('nudges'))
  return keys.ok ? ok(new Set(keys.value)) : keys
}

/** True for the one who may show it, however many ask at the same time. */
export const claimNudge = (device: Device, key: string, shown: NudgeShown): Promise<Result<boolean, StorageRefusal>> =>
  device.use(async (db) => {
    try {
      await writeStrictly(db, ['nudges'], async (tx) => {
        await tx.objectStore('nudges').add(shown, key)
      })
      return true
    } catch (error) {
      if (error instanceof DOMException && error.name === 'ConstraintError') return false
      throw error
    }
  })
