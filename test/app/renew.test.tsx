/** What an older codec has read is read once more, and then no more. */
// @vitest-environment node
import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { nothingSeen, openLedger, readAfter } from '../../app/storage/ledger.ts'
import { renew } from '../../app/storage/renew.ts'
import { writeStrictly } from '../../app/storage/transaction.ts'
import { codecVersion, type Held, type Moment, type PlaceId, type Stamp } from '../../core/index.ts'
import { done } from '../support/given.ts'

const id = (n: number) => `00170000000000${n}-000-otherphone` as Stamp
const place = (n: number) => ({
  kind: 'placeDescribed' as const,
  at: (1_700_000_000_000 + n) as Moment,
  place: `shelf${n}` as PlaceId,
  name: `shelf ${n}`,
  door: 'fridge' as const,
})
const read = (n: number): Held => ({ id: id(n), fact: place(n) })
const unread = (n: number, fact: object): Held => ({ id: id(n), unread: { id: id(n), fact } })

test('texts and records of an older codec are renewed one by one, tell the same, and are left alone afterwards', async () => {
  const ledger = openLedger()
  const [byNow, notYet] = [unread(3, place(3)), unread(4, { ...place(4), kind: 'moonPhased' })]
  const text = (...entries: readonly Held[]) => JSON.stringify(entries)
  await ledger.use((db) =>
    writeStrictly(db, ['entries', 'sealed'], async (tx) => {
      await tx.objectStore('sealed').add({ text: text(read(1)), codec: 0 }, 1)
      await tx.objectStore('sealed').add({ text: text(read(2), byNow), codec: 0 }, 3)
      await tx.objectStore('entries').add({ entry: notYet, codec: 0 }, 4)
      await tx.objectStore('entries').add({ entry: read(5), codec: codecVersion }, 5)
      await tx.objectStore('entries').add({ entry: read(6), codec: codecVersion + 7 }, 6)
    }),
  )
  const before = done(await readAfter(ledger, nothingSeen))
  const rounds = [await renew(ledger), await renew(ledger), await renew(ledger), await renew(ledger)]
  expect(rounds.map(done)).toEqual([true, true, false, false])
  expect(done(await readAfter(ledger, nothingSeen))).toEqual(before)
  expect(before.entries).toEqual([read(1), read(2), read(3), notYet, read(5), read(6)])
  const stored = await ledger.use((db) => Promise.all([db.getAll('sealed'), db.getAll('entries')]))
  const [sealed, entries] = done(stored)
  expect(sealed).toEqual([
    { text: text(read(1)), codec: codecVersion },
    { text: text(read(2), read(3)), codec: codecVersion },
  ])
  expect(entries.map(({ codec }) => codec)).toEqual([codecVersion, codecVersion, codecVersion + 7])
  ledger.close()
})
