/**
 * Browsers as they can be, stood in for by a real one: what it says of itself is overwritten before the app starts. The wishes
 * and the calendar are taken through the page, as she would.
 */
import type { BrowserContext, Page } from '@playwright/test'

export type Browser = 'everything' | 'forbidden' | 'takenBack' | 'homeScreenFirst' | 'nothing'

export const standIn = async (context: BrowserContext, browser: Browser): Promise<void> => {
  if (browser === 'homeScreenFirst' || browser === 'nothing')
    await context.addInitScript((first) => {
      Reflect.deleteProperty(window, 'Notification')
      Reflect.deleteProperty(Navigator.prototype, 'wakeLock')
      Reflect.deleteProperty(Navigator.prototype, 'setAppBadge')
      Reflect.deleteProperty(ServiceWorkerRegistration.prototype, 'periodicSync')
      if (first) Object.defineProperty(navigator, 'standalone', { value: false })
    }, browser === 'homeScreenFirst')
  if (browser === 'everything' || browser === 'takenBack')
    await context.addInitScript(() => {
      Object.defineProperty(Notification, 'requestPermission', { value: async () => 'granted' })
      Object.defineProperty(Notification, 'permission', {
        get: () => (sessionStorage.getItem('taken-back') ? 'default' : 'granted'),
      })
      const tags = new Set<string>()
      Object.defineProperty(ServiceWorkerRegistration.prototype, 'periodicSync', {
        configurable: true,
        get: () => ({
          register: async (tag: string) => void tags.add(tag),
          unregister: async (tag: string) => void tags.delete(tag),
          getTags: async () => [...tags],
        }),
      })
      navigator.permissions.query = async () =>
        Object.assign(new EventTarget(), { state: 'granted' }) as PermissionStatus
      const asked = window.matchMedia.bind(window)
      window.matchMedia = (query) =>
        query.includes('standalone') ? ({ matches: true } as MediaQueryList) : asked(query)
      Object.defineProperty(navigator, 'setAppBadge', { configurable: true, value: async () => {} })
      Object.defineProperty(navigator, 'clearAppBadge', { configurable: true, value: async () => {} })
    })
  if (browser === 'forbidden')
    await context.addInitScript(() => {
      Object.defineProperty(Notification, 'permission', { get: () => 'denied' })
    })
}

/** On the page about reminders. */
export const asSheWould = async (page: Page, browser: Browser): Promise<void> => {
  if (browser === 'everything' || browser === 'takenBack') await page.getByRole('radio', { name: /^Yes/ }).click()
  if (browser === 'takenBack') {
    await page.evaluate(() => sessionStorage.setItem('taken-back', 'yes'))
    await page.evaluate(() => window.dispatchEvent(new Event('focus')))
    await page.getByText('taken back by the browser').waitFor()
  }
  if (browser !== 'everything') return
  await page.getByRole('radio', { name: /^Before I go to bed/ }).click()
  await page.getByRole('radio', { name: /^Show nothing between/ }).click()
  await page.getByRole('radio', { name: /^At an hour of its own/ }).click()
  const file = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Take a calendar file' }).click()
  await file
}
