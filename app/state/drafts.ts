/**
 * Half-filled forms outlive the app. What is typed is on disk a third of a second later, or at once when the screen is
 * left; phones kill apps in the background without asking.
 */
import type { Moment } from '../../core/index.ts'
import type { Draft } from '../storage/device.ts'
import { dropDraft, keepDraft, letGo, readDraft } from '../storage/drafts.ts'
import { now } from './clock.ts'
import { device } from './device.ts'
import { newId } from './ids.ts'
import { turns } from './inTurn.ts'
import { signal } from './signal.ts'

/** How long a keystroke may wait for the next one. */
const pause = 300
/** Not kept over a reload: a duplicated tab would share it. The draft of the tab that was is found by its form. */
const tab = newId()

export type DraftState<Fields> = {
  readonly fields: Fields
  /** False until the disk has answered; typing may begin before. */
  readonly ready: boolean
  /** When what was restored had been typed. */
  readonly restoredFrom?: Moment
}
export type OpenDraft<Fields> = {
  readonly subscribe: (listen: () => void) => () => void
  readonly state: () => DraftState<Fields>
  readonly change: (fields: Partial<Fields>) => void
  /** After the form is saved, or given up: the fields are as at first, on the screen and on the disk. */
  readonly clear: () => Promise<void>
  readonly flush: () => Promise<void>
}

const openDrafts = new Set<{ readonly flush: () => Promise<void> }>()
/** Before the page goes. */
export const flushDrafts = async (): Promise<void> => {
  await Promise.all([...openDrafts].map((draft) => draft.flush()))
}
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') void flushDrafts()
})
window.addEventListener('pagehide', () => void flushDrafts())

export const openDraft = <Fields extends object>(form: string, initial: Fields): OpenDraft<Fields> => {
  const changed = signal()
  const inTurn = turns()
  let state: DraftState<Fields> = { fields: initial, ready: false }
  let typed: Partial<Fields> = {}
  let from: Draft | undefined
  let cleared = false
  let dirty = false
  let watchers = 0
  let timer: ReturnType<typeof setTimeout> | undefined

  const show = (next: DraftState<Fields>) => {
    state = next
    changed.tell()
  }
  const restored = inTurn(async () => {
    const read = await readDraft(device, form)
    if (read.ok) from = read.value
    if (cleared || from === undefined) return show({ ...state, ready: true })
    // What she has typed since the form opened is newer than anything on the disk.
    show({ fields: { ...restore(initial, from.fields), ...typed }, ready: true, restoredFrom: from.savedAt })
  })
  const write = async () => {
    if (!dirty) return
    dirty = false
    const kept = await keepDraft(device, form, { fields: state.fields, savedAt: now(), tab })
    // Full or closed: it stays in memory, and the next keystroke or the next leaving tries again.
    if (kept.ok) await letGoOfFirst()
    else dirty = true
  }
  const letGoOfFirst = async () => {
    if (from !== undefined && from.tab !== tab) await letGo(device, form, from)
    from = undefined
  }
  const flush = () => {
    clearTimeout(timer)
    timer = undefined
    return inTurn(write)
  }
  const draft: OpenDraft<Fields> = {
    subscribe: (listen) => {
      openDrafts.add(draft)
      watchers += 1
      const leave = changed.subscribe(listen)
      return () => {
        leave()
        watchers -= 1
        if (watchers > 0) return
        void flush().then(() => {
          if (watchers === 0 && !dirty) openDrafts.delete(draft)
        })
      }
    },
    state: () => state,
    change: (fields) => {
      typed = { ...typed, ...fields }
      dirty = true
      show({ ...state, fields: { ...state.fields, ...fields } })
      // Not put off by the next keystroke: steady typing would never be saved.
      timer ??= setTimeout(() => {
        timer = undefined
        void restored.then(flush)
      }, pause)
    },
    clear: () => {
      clearTimeout(timer)
      timer = undefined
      typed = {}
      dirty = false
      cleared = true
      show({ fields: initial, ready: true })
      return inTurn(async () => {
        await dropDraft(device, form, tab)
        await letGoOfFirst()
      })
    },
    flush,
  }
  return draft
}

/** Fields the form still has, where they are still of the same sort; an update may have changed the form meanwhile. */
const restore = <Fields extends object>(initial: Fields, saved: unknown): Fields => {
  if (typeof saved !== 'object' || saved === null) return initial
  const there = new Map<string, unknown>(Object.entries(saved))
  const sameSort = (a: unknown, b: unknown) =>
    a === undefined || b === undefined || (typeof a === typeof b && Array.isArray(a) === Array.isArray(b))
  const fitting = Object.entries(initial).filter(([name, value]) => there.has(name) && sameSort(value, there.get(name)))
  return { ...initial, ...Object.fromEntries(fitting.map(([name]) => [name, there.get(name)])) }
}
