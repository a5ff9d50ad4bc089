/** The worker's part in nudges: it decides again by its own clock and its own reading of the book. */
import { fold, type Moment, moment, refuse } from '../../core/index.ts'
import { type Dosed, noteDosed } from '../reminders/dosed.ts'
import { dosedAction, notifications, offerIn } from '../reminders/notification.ts'
import { reconcile } from '../reminders/reconcile.ts'
import { newDeviceId } from '../state/ids.ts'
import { phoneZone } from '../state/phoneZone.ts'
import { openDevice } from '../storage/device.ts'
import { openLedger } from '../storage/ledger.ts'
import { channelOf, type TabMessage } from '../storage/messages.ts'
import { ledgerName } from '../storage/schema.ts'
import { dosedWords } from '../words/nudges.ts'

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

export const nudge = (woken: string): Promise<unknown> =>
  withBook((book) =>
    reconcile({ ...book, now, zone: phoneZone(), channels: [notifications(self.registration)], woken }),
  )

export const answerNudge = async ({ action, notification }: NotificationEvent): Promise<void> => {
  const offer = offerIn(notification.data)
  if (action !== dosedAction || !offer) {
    notification.close()
    return toTheApp()
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
}

const tellTabs = (message: TabMessage) => {
  const channel = new BroadcastChannel(channelOf(ledgerName))
  channel.postMessage(message)
  channel.close()
}

const toTheApp = async (): Promise<void> => {
  const [open] = await self.clients.matchAll({ type: 'window', includeUncontrolled: true })
  await (open ? open.focus() : self.clients.openWindow('./#/'))
}
