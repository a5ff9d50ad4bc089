/** What the browser tests reach into: the real storage and the real state, and one form. */
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { handOverBackup, makeBackup } from '../../../app/state/backup.ts'
import { now, useNow } from '../../../app/state/clock.ts'
import { device, renewDevice, setMatter, thisDevice, useMatter } from '../../../app/state/device.ts'
import { newId } from '../../../app/state/ids.ts'
import { flushAndReload, loadPart } from '../../../app/state/leave.ts'
import { usePersistence } from '../../../app/state/persist.ts'
import { importBackup, previewBackup } from '../../../app/state/restoring.ts'
import {
  currentWorld,
  firstScreenStands,
  request,
  start,
  takeIn,
  useStatus,
  useWorld,
  wholeBook,
} from '../../../app/state/store.ts'
import { useOfflineReady, useUpdate, watchForUpdates } from '../../../app/state/updates.ts'
import { useDraft } from '../../../app/state/useDraft.ts'
import { nothingSeen, openLedger, readAfter } from '../../../app/storage/ledger.ts'
import { claimNudge } from '../../../app/storage/nudges.ts'
import { seal } from '../../../app/storage/seal.ts'
import {
  type BottleId,
  type DeviceId,
  type FoodId,
  type Held,
  microlitres,
  moment,
  nextStamp,
  ok,
  type PlaceId,
  refuse,
  type Stamp,
} from '../../../core/index.ts'

const place = (name: string) => ({
  kind: 'placeDescribed' as const,
  at: now(),
  place: newId<PlaceId>(),
  name,
  door: 'freezer' as const,
})

const harness = {
  started: Promise.resolve(),
  /** One append of one place. */
  add: (name: string) => request(() => ok([place(name)])),
  /** One append of many. */
  addMany: (count: number) => request(() => ok(Array.from({ length: count }, (_, i) => place(`shelf ${i}`)))),
  addBottle: () =>
    request((_world, { now: at }) =>
      ok([
        {
          kind: 'bottleRecorded',
          at,
          bottle: newId<BottleId>(),
          food: newId<FoodId>(),
          size: { value: 473, unit: 'mL' },
          contents: microlitres(473_000),
          about: false,
          place: newId<PlaceId>(),
        },
      ]),
    ),
  /** Refused if there is a place of that name already, wherever it was written. */
  addOnce: (name: string) =>
    request((world) =>
      [...world.places.values()].flat().some((known) => known.name === name)
        ? refuse({ why: 'known' })
        : ok([place(name)]),
    ),
  ids: async () => {
    const book = await wholeBook()
    return book.ok ? book.value.map(({ id }) => id) : []
  },
  unread: () => currentWorld().unread.length,
  names: () => [...currentWorld().places.values()].flat().map(({ name }) => name),
  onDisk: async () => {
    const ledger = openLedger()
    const read = await readAfter(ledger, nothingSeen)
    ledger.close()
    return read.ok ? read.value.entries.map(({ id }) => id) : read.refusal.why
  },
  sealNow: async () => {
    const ledger = openLedger()
    const sealed = await seal(ledger)
    ledger.close()
    return sealed
  },
  /** Another phone's entries. */
  strangers: (count: number): readonly Held[] => {
    let latest: Stamp | undefined
    return Array.from({ length: count }, (_, i) => {
      latest = nextStamp(latest, moment(1_700_000_000_000 + i * 60_000), 'otherphone' as DeviceId)
      return { id: latest, fact: { ...place(`other ${i}`), at: moment(1_700_000_000_000 + i * 60_000) } }
    })
  },
  takeIn,
  makeBackup,
  handOver: handOverBackup,
  previewBackup,
  importBackup,
  thisDevice,
  renewDevice,
  setMatter,
  claimNudge: (key: string) => claimNudge(device, [key], { plannedAt: now(), shownAt: now(), via: 'harness' }),
  flushAndReload,
  watchForUpdates,
  loadPart,
}
export type Harness = typeof harness
declare global {
  interface Window {
    harness: Harness
  }
}

const Form = () => {
  const { fields, change, clear, restoredFrom } = useDraft('note', { text: '' })
  const { places } = useWorld()
  const update = useUpdate()
  const save = async () => {
    const saved = await request(() => ok([place(fields.text)]))
    if (saved.ok) await clear()
  }
  return (
    <>
      <label>
        Note <input value={fields.text} onChange={({ target }) => change({ text: target.value })} />
      </label>
      <button type="button" onClick={save}>
        Save
      </button>
      <p>{restoredFrom === undefined ? 'new' : 'restored'}</p>
      <p>{`places: ${places.size}`}</p>
      <p>{`status: ${useStatus()}`}</p>
      <p>{`edition: ${import.meta.env.MODE}`}</p>
      <p>{`offline: ${useOfflineReady().offlineReady ? 'ready' : 'not said'}`}</p>
      {update.waiting && (
        <button type="button" onClick={update.take}>
          Take the new version
        </button>
      )}
      <p>{`kept by the browser: ${usePersistence() ?? 'not asked'}`}</p>
      <p>{`look: ${useMatter('look') ?? 'unsaid'}`}</p>
      <p>{`time: ${new Date(useNow()).toISOString()}`}</p>
    </>
  )
}

window.harness = harness
harness.started = start().then(async () => {
  firstScreenStands()
  await wholeBook()
})
const root = document.getElementById('root')
if (root) {
  createRoot(root).render(
    <StrictMode>
      <Form />
    </StrictMode>,
  )
}
