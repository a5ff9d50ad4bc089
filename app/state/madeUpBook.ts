/** The made-up book on disk: written before it is opened, held while a tab is in it, and deleted when none is. */
import { ok, type Result } from '../../core/index.ts'
import { madeUp as told } from '../madeup/household.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { deviceId, openDevice } from '../storage/device.ts'
import { importEntries } from '../storage/importing.ts'
import { nothingSeen, openLedger, readAfter } from '../storage/ledger.ts'
import { deleteMadeUp, madeUp } from '../storage/madeUp.ts'
import { now } from './clock.ts'
import { device } from './device.ts'
import { newDeviceId, newId } from './ids.ts'
import { dropAllWords } from './lastWords.ts'
import { phoneZone } from './phoneZone.ts'
import { closeBook, start } from './store.ts'

/** In the tab that is about to go in. What another tab left behind is not shown again. */
export const prepare = async (): Promise<Result<void, StorageRefusal>> => {
  await sweep()
  await hold()
  const filled = await fill()
  if (!filled.ok) {
    await letGo()
    await sweep()
  }
  return filled
}

/** In a tab that is in it. It is written anew if it is not there: a browser may bring back a tab of last week. */
export const startMadeUp = async (): Promise<void> => {
  await hold()
  await fill()
  await start()
}

/** Nothing of it stays, unless another tab is in it too; the last to leave takes it along. */
export const clearAway = async (): Promise<void> => {
  closeBook()
  device.end()
  await letGo()
  // A disk that does not answer must not hold her there; the next start tries again.
  await Promise.race([sweep(), new Promise((resolve) => setTimeout(resolve, 2_000))])
}

const inUse = 'smallhours-madeup'
const writing = 'smallhours-madeup-writing'
let held: { readonly release: () => void; readonly released: Promise<unknown> } | undefined

/** Until the page goes, or lets go. Without locks (an insecure address) the tabs do not know of each other. */
const hold = (): Promise<void> =>
  new Promise((gotIt) => {
    if (!('locks' in navigator)) return gotIt()
    let release = () => {}
    const until = new Promise<void>((resolve) => {
      release = resolve
    })
    const released = navigator.locks.request(inUse, { mode: 'shared' }, () => {
      gotIt()
      return until
    })
    held = { release, released }
  })

export const letGo = async (): Promise<void> => {
  held?.release()
  await held?.released
  held = undefined
}

/** Does nothing while a tab is in it. */
export const sweep = async (): Promise<void> => {
  const all = async () => {
    await deleteMadeUp()
    dropAllWords(madeUp.ledger)
  }
  if (!('locks' in navigator)) return all()
  await navigator.locks.request(inUse, { ifAvailable: true }, (free) => (free ? all() : undefined))
}

/** Once, however many tabs come in at the same time: told twice it would be two households. */
const fill = (): Promise<Result<void, StorageRefusal>> =>
  'locks' in navigator ? navigator.locks.request(writing, write) : write()

const write = async (): Promise<Result<void, StorageRefusal>> => {
  const ledger = openLedger(madeUp.ledger)
  const matters = openDevice(madeUp.device)
  try {
    const there = await readAfter(ledger, nothingSeen)
    if (!there.ok) return there
    if (there.value.entries.length > 0) return ok(undefined)
    const id = await deviceId(matters, newDeviceId)
    if (!id.ok) return id
    const done = await importEntries(ledger, told({ now: now(), zone: phoneZone(), device: id.value, newId }))
    if (done.ok) return ok(undefined)
    // Nobody stops it, so it is the disk's refusal.
    return done.refusal.why === 'importStopped'
      ? { ok: false, refusal: { why: 'storageFailed', message: done.refusal.why } }
      : { ok: false, refusal: done.refusal }
  } finally {
    ledger.end()
    matters.end()
  }
}
