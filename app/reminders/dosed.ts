/** "Dosed", touched on the notification: the same request as the large button's, written by whoever is awake. */
import {
  type DeviceId,
  type DoseFact,
  type DoseRefusal,
  type Entry,
  type Fact,
  fold,
  giveDose,
  type Held,
  latestStamp,
  type Moment,
  nightOf,
  ok,
  type Result,
  refuse,
  type Stamp,
  tankAt,
  type World,
} from '../../core/index.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { type Device, deviceId } from '../storage/device.ts'
import { append, nothingSeen, readAfter } from '../storage/ledger.ts'
import type { Ledger } from '../storage/schema.ts'
import type { Offer } from './channel.ts'

/** The notification lay there until its night had passed: `at` would put the dose into another. */
export type NightIsOver = { readonly why: 'nightIsOver' }
export type DosedRefusal = DoseRefusal | NightIsOver

export type Desk = {
  readonly now: () => Moment
  readonly ledger: Ledger
  readonly device: Device
  readonly newDeviceId: () => DeviceId
}
export type Dosed = {
  /** The book as it stood when it was asked, so that the answer can be put into words. */
  readonly world: World
  readonly at: Moment
  readonly done: Result<readonly Entry<Fact>[], DosedRefusal | StorageRefusal>
}

export const noteDosed = async (offer: Offer, { now, ledger, device, newDeviceId }: Desk): Promise<Dosed> => {
  const at = now()
  const book = await readAfter(ledger, nothingSeen)
  if (!book.ok) return { world: fold([]), at, done: book }
  const { entries, last } = book.value
  let world = fold(entries)
  const id = await deviceId(device, newDeviceId)
  if (!id.ok) return { world, at, done: id }
  const ids = entries.map((entry) => entry.id)
  const known = new Set<Stamp>(ids)
  const ask = (newer: readonly Held[]) => {
    if (newer.length > 0) world = fold([...entries, ...newer])
    return dosesOf(offer, world, at)
  }
  const done = await append(ledger, { last, has: (stamp) => known.has(stamp) }, ask, {
    now: at,
    device: id.value,
    latest: latestStamp(ids, at),
  })
  return { world, at, done: done.ok ? ok(done.value.added) : done }
}

/** One that is given already is passed over, unless all are. Anything else refused, and nothing is written. */
const dosesOf = (offer: Offer, world: World, at: Moment): Result<readonly DoseFact[], DosedRefusal> => {
  const over = offer.tanks.some((id) => {
    const tank = tankAt(world, id, at)
    return tank && nightOf(at, tank) !== offer.night
  })
  if (over) return refuse({ why: 'nightIsOver' })
  const facts: DoseFact[] = []
  let given: DoseRefusal | undefined
  for (const dose of offer.doses) {
    const asked = giveDose(world, { ...dose, at }, at)
    if (asked.ok) facts.push(...asked.value)
    else if (asked.refusal.why === 'alreadyGiven' || asked.refusal.why === 'justRecorded') given = asked.refusal
    else return asked
  }
  return facts.length === 0 && given ? refuse(given) : ok(facts)
}
