/** A book that cannot be read makes no backup: what is not known to be whole is not handed out as if it were. */
import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { makeBackup } from '../../app/state/backup.ts'
import { start } from '../../app/state/store.ts'

test('while a newer version holds the book, a backup is refused instead of being empty', async () => {
  await new Promise((resolve) => {
    const asked = indexedDB.open('smallhours', 99)
    asked.onsuccess = () => {
      asked.result.close()
      resolve(undefined)
    }
  })
  await start()
  expect(await makeBackup()).toEqual({ ok: false, refusal: { why: 'closedForUpdate' } })
})
