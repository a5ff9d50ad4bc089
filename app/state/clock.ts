/** The one place that reads the time. What is shown moves on by the minute, and at once when the phone wakes up. */
import { useSyncExternalStore } from 'react'
import { type Moment, moment } from '../../core/index.ts'
import { signal } from './signal.ts'

export const now = (): Moment => moment(Date.now())

const minute = 60_000
const changed = signal()
let shown = now()
let timer: ReturnType<typeof setTimeout> | undefined

/** Also called when something is recorded: nothing may be shown that is later than the time shown. */
export const tick = () => {
  shown = now()
  if (timer !== undefined) {
    clearTimeout(timer)
    timer = setTimeout(tick, minute - (shown % minute))
  }
  changed.tell()
}

// A sleeping phone stops its timers, and a page kept in memory comes back with the time it left.
const wakings = [
  [document, 'visibilitychange'],
  [window, 'pageshow'],
  [window, 'focus'],
] as const
let watching = 0
const subscribe = (listen: () => void) => {
  const leave = changed.subscribe(listen)
  if (watching++ === 0) {
    for (const [target, waking] of wakings) target.addEventListener(waking, tick)
    timer = setTimeout(tick, minute - (now() % minute))
  }
  return () => {
    leave()
    if (--watching > 0) return
    for (const [target, waking] of wakings) target.removeEventListener(waking, tick)
    clearTimeout(timer)
    timer = undefined
  }
}

/** The time to show: at most a minute old. Nobody had it on screen until now, so it may catch up before the first look. */
export const useNow = (): Moment => useSyncExternalStore(subscribe, timeShown)
const timeShown = (): Moment => {
  if (watching === 0 && now() - shown >= minute) shown = now()
  return shown
}
