/** By the phone's own notifications: from the page as well as from the worker, always through the registration. */
import type { Channel, Offer } from './channel.ts'

/** The platform's types lack the buttons, which not every browser has. */
type WithActions = NotificationOptions & {
  readonly actions?: readonly { readonly action: string; readonly title: string }[]
}

/** What a touch on the button is called when it comes back. */
export const dosedAction = 'dosed'

export const notifications = (registration: ServiceWorkerRegistration): Channel => ({
  name: 'notification',
  open: () => 'Notification' in globalThis && Notification.permission === 'granted',
  show: ({ key, title, body, offer, quiet }) => {
    const options: WithActions = {
      body,
      tag: key,
      ...(quiet ? { silent: true } : {}),
      ...(offer ? { data: offer, actions: [{ action: dosedAction, title: 'Dosed' }] } : {}),
    }
    return registration.showNotification(title, options)
  },
})

/** What a notification carries: an offer, nothing, or something an older version put there. */
export const offerIn = (data: unknown): Offer | undefined => (isOffer(data) ? data : undefined)
const isOffer = (data: unknown): data is Offer =>
  typeof data === 'object' && data !== null && 'kind' in data && data.kind === 'offer'
