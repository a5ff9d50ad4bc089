/** Disk first, then memory, then the screen, then the other tabs. */
import { useSyncExternalStore } from 'react'
import {
  type Entry,
  type Fact,
  fold,
  glanceOf,
  type Held,
  latestStamp,
  type Moment,
  noteClashes,
  ok,
  type Result,
  type Stamp,
  type World,
} from '../../core/index.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { keepGlance, readGlance } from '../storage/glance.ts'
import { type Imported, type ImportStopped, importEntries, type Progress } from '../storage/importing.ts'
import { type Arrived, append, openLedger, readAfter, type Seen } from '../storage/ledger.ts'
import { renew } from '../storage/renew.ts'
import type { Ledger } from '../storage/schema.ts'
import { seal } from '../storage/seal.ts'
import { now, tick } from './clock.ts'
import { readDevice, thisDevice } from './device.ts'
import { household } from './household.ts'
import { whenIdle } from './idle.ts'
import { turns } from './inTurn.ts'
import { afterRecording } from './persist.ts'
import { signal } from './signal.ts'
import { joinTabs, onMessage, tellTabs } from './tabs.ts'

/**
 * `glance`: enough is known for Tonight, and the rest is being read. `blocked`: an older tab has not made way.
 * `closedForUpdate`: this one has. Either way the person must hear of it.
 */
export type Status = 'opening' | 'glance' | 'blocked' | 'ready' | StorageRefusal['why']

let ledger: Ledger | undefined
let entries: readonly Held[] = []
/** All of it has been read at least once. */
let whole = false
let last = 0
let newest: readonly Stamp[] = []
let world: World = fold([])
let status: Status = 'opening'
const changed = signal()
const inTurn = turns()

export const useWorld = (): World => useSyncExternalStore(changed.subscribe, currentWorld)
export const currentWorld = (): World => world
/** Told after each change of the world. */
export const watchWorld = changed.subscribe
export const useStatus = (): Status => useSyncExternalStore(changed.subscribe, () => status)
/**
 * Everything this phone holds, as a backup wants it. Never a part of it: an empty file that was taken for a backup would be
 * found out when it is needed. Once all of it was read, a disk that fails is no reason to keep it from her.
 */
export const wholeBook = (): Promise<Result<readonly Held[], StorageRefusal>> =>
  inTurn(async () => {
    const read = await catchUp()
    return read.ok || whole ? ok(entries) : read
  })

/** All there is on disk by now, or that it could not be read. */
export const readAll = (): Promise<Result<void, StorageRefusal>> => inTurn(catchUp)

/** Once what was asked up to now is on disk, or refused. */
export const settled = (): Promise<void> => inTurn(async () => {})

/** A screen that cannot be drawn must not keep the book closed. */
const longestDrawing = 3_000
let tellDrawn: () => void = () => {}
/** What is put off for the first screen's sake waits for this. */
export const drawn = new Promise<void>((resolve) => {
  tellDrawn = resolve
  setTimeout(resolve, longestDrawing)
})
/** Called once the first screen stands: what was put off for its sake may begin, after it has reached the glass. */
export const firstScreenStands = () => {
  // A hidden page gets no frames.
  if (document.visibilityState === 'hidden') tellDrawn()
  else requestAnimationFrame(() => setTimeout(tellDrawn))
}

/** Changes with every build that could fold another world: the name of a built file tells what is in it. */
const build = import.meta.url

/**
 * Opens the ledger and reads it. Called once, before the first screen; what goes wrong is told by the status. Done when
 * Tonight can be shown, which may be before everything is read; what is requested meanwhile waits its turn.
 */
export const start = async (name: string = household.ledger): Promise<void> => {
  if (name !== household.ledger) joinTabs(name)
  ledger = openLedger(name, {
    blocked: () => setStatus('blocked'),
    closedForUpdate: () => setStatus('closedForUpdate'),
  })
  const device = readDevice()
  const glance = await readGlance(ledger, build)
  if (glance.ok && glance.value) {
    world = glance.value
    setStatus('glance')
    void inTurn(async () => {
      await drawn
      await catchUp()
    })
  }
  onMessage((message) => {
    if (message.type === 'appended') void inTurn(catchUp)
  })
  // A tab that was frozen has missed what the others said.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void inTurn(catchUp)
  })
  await (status === 'glance' ? device : Promise.all([inTurn(catchUp), device]))
  whenIdle(tidy)
  whenIdle(renewOld)
}

/** What a request asks the core, of the world as it is inside the transaction. May be asked more than once. */
export type Ask<Refusal> = (world: World, context: { readonly now: Moment }) => Result<readonly Fact[], Refusal>

/** Records what `ask` answers. When this is done the entries are on disk, in memory and on their way to the other tabs. */
export const request = <Refusal>(
  ask: Ask<Refusal>,
): Promise<Result<readonly Entry<Fact>[], Refusal | StorageRefusal>> =>
  inTurn(async () => {
    const device = await thisDevice()
    if (!device.ok) return device
    const context = { now: now() }
    const asked = (newer: readonly Held[]) => ask(newer.length === 0 ? world : fold([...entries, ...newer]), context)
    const latest = latestStamp(newest, context.now)
    const done = await append(opened(), seen(), asked, { now: context.now, device: device.value, latest })
    if (!done.ok) return done
    const { newer, added } = done.value
    take({ entries: [...newer, ...added], last: done.value.last })
    if (added.length > 0) {
      tellTabs({ type: 'appended' })
      afterRecording(added)
      whenIdle(tidy)
    }
    return ok(added)
  })

/** All of them or none. Whether this was a restore is for the caller to judge, and then to take a new device id. */
export const takeIn = (
  theirs: readonly Held[],
  tell?: (progress: Progress) => void,
  signal?: AbortSignal,
): Promise<Result<Imported, StorageRefusal | ImportStopped>> =>
  inTurn(async () => {
    const done = await importEntries(opened(), theirs, tell, signal)
    if (!done.ok) return done
    await catchUp()
    if (done.value.clashes.length > 0) await keepTheirWords(done.value.clashes)
    tellTabs({ type: 'appended' })
    whenIdle(tidy)
    return done
  })

/** What the file says otherwise, to be asked about. It is still in the file: what cannot be kept now is kept when it comes in again. */
const keepTheirWords = async (clashes: Imported['clashes']): Promise<void> => {
  const device = await thisDevice()
  if (!device.ok) return
  const at = now()
  const asked = (newer: readonly Held[]) =>
    ok(noteClashes(newer.length === 0 ? world : fold([...entries, ...newer]), clashes, at))
  const clock = { now: at, device: device.value, latest: latestStamp(newest, at) }
  const done = await append(opened(), seen(), asked, clock)
  if (done.ok) take({ entries: [...done.value.newer, ...done.value.added], last: done.value.last })
}

/** Before it is deleted: nothing that comes late may open it anew. */
export const closeBook = () => ledger?.end()

const opened = (): Ledger => {
  if (ledger === undefined) throw new Error('The ledger was used before it was started')
  return ledger
}

const seen = (): Seen => {
  let ids: Set<Stamp> | undefined
  return {
    last,
    has: (id) => {
      ids ??= new Set(entries.map((entry) => entry.id))
      return ids.has(id)
    },
  }
}

const catchUp = async (): Promise<Result<void, StorageRefusal>> => {
  const read = await readAfter(opened(), seen())
  if (!read.ok) {
    setStatus(read.refusal.why)
    return read
  }
  if (status !== 'ready' || read.value.last > last) take(read.value)
  return ok(undefined)
}

const take = (arrived: Arrived) => {
  last = arrived.last
  whole = true
  if (arrived.entries.length > 0) {
    newest = newestOf([...newest, ...arrived.entries.map(({ id }) => id)])
    entries = entries.concat(arrived.entries)
    world = fold(entries)
    tick()
  }
  status = 'ready'
  changed.tell()
}

/** The latest stamp worth following, and those of clocks far ahead, which may be worth it once the time has come. */
const newestOf = (stamps: readonly Stamp[]): readonly Stamp[] => {
  const near = latestStamp(stamps, now())
  return near === undefined ? stamps : stamps.filter((stamp) => stamp >= near)
}

const setStatus = (to: Status) => {
  status = to
  changed.tell()
}

/** Housekeeping: what it cannot do now it will do another day. */
const tidy = () =>
  void inTurn(async () => {
    await seal(opened())
    if (status === 'ready') await keepGlance(opened(), { build, last, world: glanceOf(world, now()) })
  })

/** After an update to another codec, once; a tap may come between two texts. */
const renewOld = () =>
  void inTurn(async () => {
    const more = await renew(opened())
    if (more.ok && more.value) whenIdle(renewOld)
  })
