/** By the phone's own notifications: from the page as well as from the worker, always through the registration. */
import { type Moment, openRuns, type TankId, tonight, type World } from '../../core/index.ts'
import { type Channel, isRunTag, type Offer, runTags, type Telling } from './channel.ts'

/** The platform's types lack the buttons, which not every browser has. */
type WithActions = NotificationOptions & {
  readonly actions?: readonly { readonly action: string; readonly title: string }[]
  readonly renotify?: boolean
  readonly vibrate?: readonly number[]
}

/** What a touch on the button is called when it comes back. */
export const dosedAction = 'dosed'

/** Long enough to be felt through a pocket; milliseconds on, off, on. */
const alarm = [600, 200, 600, 200, 600] as const

export const notifications = (registration: ServiceWorkerRegistration): Channel => ({
  name: 'notification',
  open: () => 'Notification' in globalThis && Notification.permission === 'granted',
  show: ({ key, title, body, offer, tanks = [], opens, quiet, loud }) => {
    const carried: Carried = { tanks, ...(offer ? { offer } : {}), ...(opens ? { opens } : {}) }
    const options: WithActions = {
      body,
      tag: key,
      data: carried,
      ...(quiet ? { silent: true } : {}),
      ...(loud ? { requireInteraction: true, renotify: true, vibrate: alarm } : {}),
      ...(offer ? { actions: [{ action: dosedAction, title: dosedLabel(offer) }] } : {}),
    }
    return alone(() => registration.showNotification(title, options))
  },
})

/** An offer that lies on the glass unanswered, to be laid there again without a sound. */
export const standingOffer = (registration: ServiceWorkerRegistration): Promise<Telling | undefined> =>
  alone(async () => {
    for (const { tag, title, body, data } of await registration.getNotifications()) {
      const offer = offerIn(data)
      if (offer) return { key: tag, title, body, offer, tanks: offer.tanks, quiet: true }
    }
    return undefined
  })

/** What is answered by now is taken off the screen: a dose on record, a night that is over, pumps that run again. */
export const withdrawAnswered = async (
  registration: ServiceWorkerRegistration,
  world: World,
  now: Moment,
): Promise<void> => {
  const due = tonight(world, now).filter(({ state }) => state.is === 'due')
  const runs = openRuns(world, now)
  const loud = new Set(
    runs.flatMap(({ run, pumps }) => [...(pumps ? [runTags.pumps(run.id)] : []), runTags.morning(run.id)]),
  )
  await alone(async () => {
    for (const notification of await registration.getNotifications()) {
      const offer = offerIn(notification.data)
      if (offer && !due.some(({ tank, night }) => offer.tanks.includes(tank.tank) && night === offer.night))
        notification.close()
      if (isRunTag(notification.tag) && !loud.has(notification.tag)) notification.close()
    }
  })
}

/**
 * One tab or worker at a time. A Chromium that is asked what is shown while another notification is on its way to the
 * glass forgets that one's data, and a touch on its button then reaches nobody.
 */
const alone = <Value>(work: () => Promise<Value>): Promise<Value> =>
  'locks' in navigator ? navigator.locks.request('smallhours-glass', work) : work()

type Carried = { readonly tanks: readonly TankId[]; readonly offer?: Offer; readonly opens?: string }

/** One touch for several tanks says so. */
const dosedLabel = ({ tanks }: Offer): string =>
  tanks.length > 2 ? 'Dosed all' : tanks.length === 2 ? 'Dosed both' : 'Dosed'

/** What a notification carries: an offer, nothing, or something an older version put there. */
export const offerIn = (data: unknown): Offer | undefined =>
  isRecord(data) && isOffer(data.offer) ? data.offer : undefined
/** The tank a touch opens. */
export const tankIn = (data: unknown): TankId | undefined =>
  isRecord(data) && Array.isArray(data.tanks) ? data.tanks.find(isTankId) : undefined

/** The page it opens: one of ours, whatever was put there. */
export const pageIn = (data: unknown): string | undefined =>
  isRecord(data) && typeof data.opens === 'string' && /^\/[\w/-]*$/.test(data.opens) ? data.opens : undefined

const isRecord = (data: unknown): data is Readonly<Record<string, unknown>> => typeof data === 'object' && data !== null
const isOffer = (data: unknown): data is Offer => isRecord(data) && data.kind === 'offer' && Array.isArray(data.tanks)
const isTankId = (data: unknown): data is TankId => typeof data === 'string'
