/**
 * Half-filled forms outlive the app. What is typed is on disk a third of a second later, or at once when the screen is
 * left; phones kill apps in the background without asking.
 */
import { type Moment, moment } from '../../core/index.ts'
import type { Draft } from '../storage/device.ts'
import { now } from './clock.ts'
import { clearSlot, keepInSlot, latestDraft, letGoOf } from './draftSlots.ts'
import { newId } from './ids.ts'
import { type InTurn, turns } from './inTurn.ts'
import { leaveWords } from './lastWords.ts'
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
  /** After the form is saved, or given up: the fields are as at first, at once on the screen, when it is done on the disk. */
  readonly clear: () => Promise<void>
  /** To the disk. */
  readonly flush: () => Promise<void>
  /** What is not yet there is put where it takes no time. */
  readonly leave: () => void
}

/** A form's own: opened anew, it reads what the one before it has written or cleared, however slow the disk is. */
const turnsOf = new Map<string, InTurn>()

const openDrafts = new Set<Pick<OpenDraft<object>, 'leave' | 'flush'>>()
/** Before the page goes. */
export const flushDrafts = async (): Promise<void> => {
  await Promise.all([...openDrafts].map((draft) => draft.flush()))
}
const leaving = () => {
  for (const draft of openDrafts) draft.leave()
  void flushDrafts()
}
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') leaving()
})
window.addEventListener('pagehide', leaving)

export const openDraft = <Fields extends object>(form: string, initial: Fields): OpenDraft<Fields> => {
  const changed = signal()
  const inTurn = turnsOf.get(form) ?? turns()
  turnsOf.set(form, inTurn)
  let state: DraftState<Fields> = { fields: initial, ready: false }
  let typed: Partial<Fields> = {}
  let from: Draft | undefined
  let cleared = false
  let edits = 0
  let saved = 0
  let typedAt = moment(0)
  let watchers = 0
  let timer: ReturnType<typeof setTimeout> | undefined

  const show = (next: DraftState<Fields>) => {
    state = next
    changed.tell()
  }
  const restored = inTurn(async () => {
    from = await latestDraft(form)
    if (cleared || from === undefined) return show({ ...state, ready: true })
    // What she has typed since the form opened is newer than anything on the disk.
    show({ fields: { ...restore(initial, from.fields), ...typed }, ready: true, restoredFrom: from.savedAt })
  })
  const asTyped = (): Draft => ({ fields: state.fields, savedAt: typedAt, tab })
  const write = async () => {
    if (saved === edits) return
    const writing = edits
    // Full or closed: it stays in memory, and the next keystroke or the next leaving tries again.
    if (!(await keepInSlot(form, asTyped()))) return
    saved = Math.max(saved, writing)
    await letGoOfFirst()
  }
  const letGoOfFirst = async () => {
    if (from !== undefined && from.tab !== tab) await letGoOf(form, from)
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
          if (watchers === 0 && saved === edits) openDrafts.delete(draft)
        })
      }
    },
    state: () => state,
    change: (fields) => {
      typed = { ...typed, ...fields }
      edits += 1
      typedAt = now()
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
      saved = edits
      cleared = true
      show({ fields: initial, ready: true })
      return inTurn(async () => {
        await clearSlot(form, tab)
        await letGoOfFirst()
      })
    },
    leave: () => {
      if (saved !== edits) leaveWords(form, asTyped())
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
