/** Reading and appending. Page and worker both use it. */
import type { IDBPDatabase, IDBPTransaction } from 'idb'
import {
  type DeviceId,
  type Entry,
  type Fact,
  type Held,
  latestStamp,
  type Moment,
  nextStamp,
  ok,
  type Result,
  refuse,
  type Stamp,
} from '../../core/index.ts'
import { connect, type Notices, type StorageRefusal } from './connection.ts'
import { fromSealed, fromStored, loadCodec, needsCodec, toStored } from './records.ts'
import { type Ledger, type LedgerStores, ledgerName, ledgerSteps, type Sealed, type Stored } from './schema.ts'
import { writeStrictly } from './transaction.ts'

export const openLedger = (name: string = ledgerName, notices?: Notices): Ledger => connect(name, ledgerSteps, notices)

/** How far a reader has read, by order of arrival, and which entries it holds. */
export type Seen = { readonly last: number; readonly has: (id: Stamp) => boolean }
export const nothingSeen: Seen = { last: 0, has: () => false }

export type Arrived = { readonly entries: readonly Held[]; readonly last: number }

/** What has arrived since, in the order of arrival, each entry once. */
export const readAfter = async (ledger: Ledger, seen: Seen): Promise<Result<Arrived, StorageRefusal>> => {
  const read = await ledger.use((db) => recordsAfter(db.transaction(bothStores), seen.last))
  if (!read.ok) return read
  if (needsCodec(read.value.all)) await loadCodec()
  return ok(arrived(read.value, seen))
}

export type Appended = {
  /** What other tabs and the worker had written meanwhile. */
  readonly newer: readonly Held[]
  readonly added: readonly Entry<Fact>[]
  readonly last: number
}
export type Ask<Refusal> = (newer: readonly Held[]) => Result<readonly Fact[], Refusal>
export type Clock = { readonly now: Moment; readonly device: DeviceId; readonly latest: Stamp | undefined }

/**
 * Tabs and the worker share this phone, and only a transaction orders them: so the question is put to what they wrote
 * meanwhile too, and stamps are minted inside (clocks kept per tab collide). Nearly always they wrote nothing: what is
 * answered then is on its way to the disk at once, and taken back if it turns out that they did.
 */
export const append = async <Refusal>(
  ledger: Ledger,
  seen: Seen,
  ask: Ask<Refusal>,
  clock: Clock,
): Promise<Result<Appended, Refusal | StorageRefusal>> => {
  const done = await ledger.use(
    async (db) => (await addAtOnce(db, seen, ask, clock)) ?? askAndAdd(db, seen, ask, clock),
  )
  if (!done.ok) return done
  if (done.value !== 'codecNeeded') return done.value
  await loadCodec()
  return append(ledger, seen, ask, clock)
}

/** Undefined: something newer is there, or it was refused, which only all that is there can do. */
const addAtOnce = async <Refusal>(
  db: IDBPDatabase<LedgerStores>,
  seen: Seen,
  ask: Ask<Refusal>,
  clock: Clock,
): Promise<Result<Appended, Refusal> | undefined> => {
  const asked = ask([])
  if (!asked.ok) return undefined
  const added = stamped(asked.value, clock.latest, clock)
  const newer = new Error('Something newer was written')
  try {
    return await writeStrictly(db, ['entries'], async (tx) => {
      const store = tx.objectStore('entries')
      // The latest arrival is never in a text, so this tells of both stores. Asked first: it is not to find our own.
      const found = store.getKey(IDBKeyRange.lowerBound(seen.last, true))
      const adding = Promise.all(added.map((entry) => store.add(toStored(entry))))
      adding.catch(() => {})
      if ((await found) !== undefined) throw newer
      tx.commit()
      return ok({ newer: [], added, last: (await adding).at(-1) ?? seen.last })
    })
  } catch (error) {
    if (error === newer) return undefined
    throw error
  }
}

const askAndAdd = <Refusal>(
  db: IDBPDatabase<LedgerStores>,
  seen: Seen,
  ask: Ask<Refusal>,
  clock: Clock,
): Promise<Result<Appended, Refusal> | 'codecNeeded'> =>
  writeStrictly(db, bothStores, async (tx) => {
    const records = await recordsAfter(tx, seen.last)
    if (needsCodec(records.all)) return 'codecNeeded'
    const { entries: newer, last } = arrived(records, seen)
    const asked = ask(newer)
    if (!asked.ok) return refuse(asked.refusal)
    const known = newer.map(({ id }) => id)
    const latest = latestStamp(clock.latest === undefined ? known : [clock.latest, ...known], clock.now)
    const added = stamped(asked.value, latest, clock)
    const store = tx.objectStore('entries')
    const adding = added.map((entry) => store.add(toStored(entry)))
    // At once: a page that is closed before it hears of the last `add` would undo them all.
    tx.commit()
    const keys = await Promise.all(adding)
    return ok({ newer, added, last: keys.at(-1) ?? last })
  })

const stamped = (facts: readonly Fact[], after: Stamp | undefined, { now, device }: Clock): readonly Entry<Fact>[] => {
  let latest = latestStamp(after === undefined ? [] : [after], now)
  return facts.map((fact) => {
    latest = nextStamp(latest, now, device)
    return { id: latest, fact }
  })
}

export type BothStores = ('entries' | 'sealed')[]
export const bothStores: BothStores = ['entries', 'sealed']
export type Records = {
  readonly sealed: readonly Sealed[]
  readonly tail: readonly Stored[]
  readonly all: readonly (Stored | Sealed)[]
  readonly last: number
}

/**
 * A sealed text counts if it reaches past `last`, though it may begin before it. The latest arrival is never in a text:
 * sealing and importing both leave some entries outside, so one small question tells that there is nothing new.
 */
export const recordsAfter = async (
  tx: IDBPTransaction<LedgerStores, BothStores, 'readonly'> | IDBPTransaction<LedgerStores, BothStores, 'readwrite'>,
  last: number,
): Promise<Records> => {
  const [entries, texts] = [tx.objectStore('entries'), tx.objectStore('sealed')]
  const range = last > 0 ? IDBKeyRange.lowerBound(last, true) : null
  if (range !== null && (await entries.getKey(range)) === undefined) return { sealed: [], tail: [], all: [], last }
  const [tail, keys, sealed] = await Promise.all([
    entries.getAll(range),
    entries.getAllKeys(range),
    texts.getAll(range),
  ])
  return { sealed, tail, all: [...sealed, ...tail], last: keys.at(-1) ?? last }
}

export const arrived = ({ sealed, tail, last }: Records, seen: Seen): Arrived => {
  const fromTexts = sealed.flatMap(fromSealed)
  // Only a text can hold what was read before: it was a row of records then.
  const unseen = seen.last > 0 ? fromTexts.filter(({ id }) => !seen.has(id)) : fromTexts
  return { entries: unseen.concat(tail.map(fromStored)), last }
}
