/** The worker's part in nudges: it decides again by its own clock and its own reading of the book. */
import { fold, type Moment, moment, refuse, type TankId } from '../../core/index.ts'
import { wishesOf } from '../reminders/asked.ts'
import { markIcon } from '../reminders/badge.ts'
import type { Channel } from '../reminders/channel.ts'
import { type Dosed, noteDosed } from '../reminders/dosed.ts'
import { dosedAction, notifications, offerIn, pageIn, standingOffer, tankIn } from '../reminders/notification.ts'
import { type Reconciled, reconcile } from '../reminders/reconcile.ts'
import { newDeviceId } from '../state/ids.ts'
import { phoneZone } from '../state/phoneZone.ts'
import { openDevice } from '../storage/device.ts'
import { openLedger } from '../storage/ledger.ts'
import { channelOf, type TabMessage, type WorkerMessage } from '../storage/messages.ts'
import { ledgerName } from '../storage/schema.ts'
import { dosedWords, statusWords, unreadWords } from '../words/nudges.ts'
import { herWindow } from './herWindow.ts'

declare const self: ServiceWorkerGlobalScope

const now = (): Moment => moment(Date.now())

/** Opened for one piece of work: a worker that sleeps with a connection open would be in a newer app's way. */
const withBook = async <Value>(
  work: (book: { ledger: ReturnType<typeof openLedger>; device: ReturnType<typeof openDevice> }) => Promise<Value>,
): Promise<Value> => {
  const [ledger, device] = [openLedger(), openDevice()]
  try {
    return await work({ ledger, device })
  } finally {
    ledger.close()
    device.close()
  }
}

/** What woke it: a page that knows the minute, the browser of its own accord, or a call from outside. */
export type Woken = 'page' | 'browser' | 'push'

/** Undefined: the book, or what this phone keeps of itself, could not be read. */
export const nudge = (woken: Woken): Promise<Reconciled | undefined> =>
  lookWith([notifications(self.registration)], woken)

const lookWith = async (channels: readonly Channel[], woken: Woken): Promise<Reconciled | undefined> => {
  const zone = phoneZone()
  const done = await withBook((book) => reconcile({ ...book, now, zone, channels, woken }))
  if (!done.ok) return undefined
  const { world, matters } = done.value
  if (matters.nudge) await markIcon(world, now(), wishesOf(matters.wishes, zone))
  return done.value
}

/**
 * A browser takes the leave back from whoever is called and shows nothing, so something true is shown whatever happens:
 * tonight's nudge; if it lies there already, that one again in its own place; else how tonight stands.
 */
export const answerPush = async (): Promise<void> => {
  const glass = notifications(self.registration)
  const found = await nudge('push').catch(() => undefined)
  if (found && found.count > 0) return
  const standing = await standingOffer(self.registration).catch(() => undefined)
  await glass.show(standing ?? (found ? statusWords(found.world, now()) : unreadWords))
}

export const answerNudge = async ({ action, notification }: NotificationEvent): Promise<void> => {
  const offer = offerIn(notification.data)
  if (action !== dosedAction || !offer) {
    notification.close()
    return toTheApp(tankIn(notification.data), pageIn(notification.data))
  }
  // A fault of ours is said as well: she must not take silence for a dose that is noted.
  const dosed = await withBook((book) => noteDosed(offer, { ...book, now, newDeviceId })).catch(
    (error: unknown): Dosed => ({
      world: fold([]),
      at: now(),
      done: refuse({ why: 'storageFailed', message: String(error) }),
    }),
  )
  // In the place of the offer, and before the tabs hear of it: what they close by that name may else be the answer.
  await notifications(self.registration)
    .show(dosedWords(notification.tag, offer, dosed))
    .finally(() => dosed.done.ok && tellTabs({ type: 'appended' }))
  // The icon's mark goes down by one; nothing is shown.
  if (dosed.done.ok) await lookWith([], 'page').catch(() => {})
}

const tellTabs = (message: TabMessage) => {
  const channel = new BroadcastChannel(channelOf(ledgerName))
  channel.postMessage(message)
  channel.close()
}

const toTheApp = async (tank: TankId | undefined, page = tank ? `/tank/${tank}` : undefined): Promise<void> => {
  const open = herWindow(await self.clients.matchAll({ type: 'window', includeUncontrolled: true }))
  if (open && page) open.postMessage({ type: 'bring', page } satisfies WorkerMessage)
  await (open ? open.focus() : self.clients.openWindow(`./#${page ?? '/'}`))
}
