/**
 * The page's part in nudges: it knows the minute and wakes the worker, which decides by itself. While no page is open
 * nothing wakes it: no browser lets an app without a server be woken at a planned time.
 */
import { type Moment, nextNudge, nextRunNudge, nextShaking, nudges, type Result } from '../../core/index.ts'
import { phoneKnows, wishesOf } from '../reminders/asked.ts'
import { clearIcon, markIcon } from '../reminders/badge.ts'
import type { NudgeStanding, Telling } from '../reminders/channel.ts'
import { notifications, withdrawAnswered } from '../reminders/notification.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { reconcileNow, type WorkerMessage } from '../storage/messages.ts'
import { now } from './clock.ts'
import { matter, setMatter, watchMatters } from './device.ts'
import { lookingRound } from './household.ts'
import { phoneZone } from './phoneZone.ts'
import { askForWakes } from './probes.ts'
import { currentWorld, watchWorld } from './store.ts'

/** A laptop that sleeps stops its timers, so none is set further ahead than this. */
const longestWait = 60_000
let timer: ReturnType<typeof setTimeout> | undefined
let wakesAsked = false
/** What this page has woken the worker for. */
const asked = new Set<string>()

/** Called once, after the first screen is up. */
export const watchNudges = (): void => {
  // What is made up deserves none, and the worker never opens its book.
  if (lookingRound || !supported()) return
  watchWorld(look)
  watchMatters(look)
  document.addEventListener('visibilitychange', look)
  window.addEventListener('pageshow', look)
  window.addEventListener('focus', look)
  navigator.serviceWorker.addEventListener('message', ({ data }: MessageEvent<WorkerMessage>) => {
    if (data.type === 'bring') window.location.hash = `#${data.page}`
  })
  look()
}

const look = () => {
  clearTimeout(timer)
  if (nudgeStanding(matter('nudge')) !== 'on') {
    void clearIcon()
    return asked.clear()
  }
  // Once a page: an app put on the home screen since is woken from then on.
  if (!wakesAsked) void askForWakes(true)
  wakesAsked = true
  const [world, at] = [currentWorld(), now()]
  const wishes = wishesOf(matter('wishes'), phoneZone())
  const phone = phoneKnows(matter('lastBackup'), matter('calendar'))
  const due = nudges(world, at, { shown: asked, wishes, phone })
  for (const { claims } of due) for (const claim of claims) asked.add(claim)
  if (due.length > 0) void wakeWorker()
  void withdraw()
  void markIcon(world, at, wishes)
  const next = [
    nextNudge(world, at, { shown: asked, wishes })?.plannedAt,
    nextShaking(at, wishes),
    nextRunNudge(world, at),
  ]
  timer = setTimeout(look, waitUntil(next, at))
}
/** No further ahead than a look is due in any case: what else there is to say of an evening has no minute of its own. */
const waitUntil = (next: readonly (Moment | undefined)[], at: Moment): number =>
  Math.min(longestWait, ...next.flatMap((then) => (then === undefined ? [] : [Math.max(0, then - at)])))

/** The same as when the browser wakes it. */
export const wakeWorker = async (): Promise<void> => {
  const registration = await navigator.serviceWorker.ready
  registration.active?.postMessage({ type: reconcileNow })
}
const withdraw = async (): Promise<void> => {
  // The book is still being opened: of an empty one nothing is due, and every offer would be taken away.
  if (currentWorld().tanks.size === 0) return
  const registration = await navigator.serviceWorker.getRegistration()
  if (registration) await withdrawAnswered(registration, currentWorld(), now())
}

/** An iPhone's browser tab has no notifications, and a private window may have no worker. */
const supported = (): boolean => 'Notification' in window && 'serviceWorker' in navigator

/** What her wish and the browser's leave come to, asked anew each time: leave may be taken back at any moment. */
export const nudgeStanding = (wish: boolean | undefined): NudgeStanding => {
  if (!supported()) return 'unsupported'
  if (Notification.permission === 'denied') return 'denied'
  if (!wish) return 'off'
  return Notification.permission === 'granted' ? 'on' : 'lost'
}

/** In the very touch: a browser asks its question only then. */
export const askForNudges = async (): Promise<Result<void, StorageRefusal>> => {
  const answer = await Notification.requestPermission()
  return setMatter('nudge', answer === 'granted')
}

/** False: there is no worker yet to show it. */
export const tryNudge = async (telling: Telling): Promise<boolean> => {
  const registration = await navigator.serviceWorker.getRegistration()
  if (!registration?.active) return false
  await notifications(registration).show(telling)
  return true
}
