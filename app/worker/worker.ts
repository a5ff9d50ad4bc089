/** Table of contents. What each handler does is named on its line. */
import { cleanupOutdatedCaches, createHandlerBoundToURL, precacheAndRoute } from 'workbox-precaching'
import { registerRoute } from 'workbox-routing'
import { eveningSync, reconcileNow, takeOver } from '../storage/messages.ts'
import { isFrontDoor } from './frontDoor.ts'
import { answerNudge, answerPush, nudge } from './nudging.ts'

/** The platform's types lack what only some browsers have. */
declare global {
  interface ServiceWorkerGlobalScopeEventMap {
    readonly periodicsync: ExtendableEvent & { readonly tag: string }
  }
}
declare const self: ServiceWorkerGlobalScope & { __WB_MANIFEST: Parameters<typeof precacheAndRoute>[0] }

precacheAndRoute(self.__WB_MANIFEST)
cleanupOutdatedCaches()
registerRoute(
  ({ request, url }) => request.mode === 'navigate' && isFrontDoor(url, self.registration.scope),
  createHandlerBoundToURL('index.html'),
)

// The very first page is served by the network, and its lazy rooms must open offline all the same.
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()))
self.addEventListener('message', (event) => {
  if (event.data?.type === takeOver) void self.skipWaiting()
  if (event.data?.type === reconcileNow) event.waitUntil(nudge('page'))
})
self.addEventListener('periodicsync', (event) => {
  if (event.tag === eveningSync) event.waitUntil(nudge('browser'))
})
self.addEventListener('push', (event) => event.waitUntil(answerPush()))
self.addEventListener('notificationclick', (event) => event.waitUntil(answerNudge(event)))
