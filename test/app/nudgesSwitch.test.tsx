/** The switch in This phone: what the browser allows, what she wishes, and what is said when they differ. */
import 'fake-indexeddb/auto'
import { render, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, expect, test, vi } from 'vitest'
import { Nudges } from '../../app/screens/Reminders/Nudges.tsx'
import { matter, setMatter } from '../../app/state/device.ts'
import { at, given, london } from '../support/given.ts'
import { lab, onHand, planOf } from '../support/givenLab.ts'

const now = at('2026-11-25 12:00')
const trays = onHand({ portions: 30, each: 1, frozen: '2026-10-01' })
const world = given(lab, trays, planOf({ first: '2026-11-25', amount: 1 })).world()
const reading = { world, now, zone: london, today: '2026-11-25' } as Parameters<typeof Nudges>[0]['reading']

/** A browser that answers so when it is asked. jsdom has neither notifications nor workers. */
const browser = (before: NotificationPermission, answer: NotificationPermission = before) => {
  const notification = { permission: before, requestPermission: vi.fn() }
  notification.requestPermission.mockImplementation(async () => {
    notification.permission = answer
    return answer
  })
  const shown = vi.fn(async () => {})
  const registration = { active: {}, showNotification: shown }
  vi.stubGlobal('Notification', notification)
  Object.defineProperty(navigator, 'serviceWorker', {
    configurable: true,
    value: { getRegistration: async () => registration },
  })
  return { notification, shown }
}
afterEach(async () => {
  vi.unstubAllGlobals()
  Reflect.deleteProperty(navigator, 'serviceWorker')
  await setMatter('nudge', false)
})

const yes = () => screen.getByRole('radio', { name: /^Yes/ })
const no = () => screen.getByRole('radio', { name: 'No' })

test('nobody is asked before she says yes; then the next one is told, and a trial can be seen', async () => {
  const { notification, shown } = browser('default', 'granted')
  render(<Nudges reading={reading} />)
  expect(no()).toHaveProperty('checked', true)
  expect(notification.requestPermission).not.toHaveBeenCalled()
  expect(screen.queryByRole('button', { name: 'Try it now' })).toBeNull()
  await userEvent.click(yes())
  expect(notification.requestPermission).toHaveBeenCalledOnce()
  await screen.findByText('Next: tonight at 21:20.')
  expect(yes()).toHaveProperty('checked', true)
  expect(matter('nudge')).toBe(true)
  await userEvent.click(screen.getByRole('button', { name: 'Try it now' }))
  await screen.findByText(/^Sent/)
  expect(shown).toHaveBeenCalledOnce()
  await userEvent.click(no())
  await waitFor(() => expect(matter('nudge')).toBe(false))
  expect(screen.queryByText(/^Next/)).toBeNull()
})

test('refused, it stays off and says how that is changed, and what else would wake her', async () => {
  browser('default', 'denied')
  render(<Nudges reading={reading} />)
  await userEvent.click(yes())
  await screen.findByText(/was told not to show any from Smallhours/)
  expect(no()).toHaveProperty('checked', true)
  expect(matter('nudge')).toBe(false)
})

test('where the leave was taken back meanwhile, it says that nudges are off', async () => {
  await setMatter('nudge', true)
  browser('default')
  render(<Nudges reading={reading} />)
  expect(screen.getByText(/the browser no longer allows them/)).toBeDefined()
  expect(no()).toHaveProperty('checked', true)
})

test('where there are no notifications, there is no switch, and the phone’s own alarm is named', () => {
  render(<Nudges reading={reading} />)
  expect(screen.queryByRole('radio')).toBeNull()
  expect(screen.getByText(/set an alarm in this phone’s own clock/)).toBeDefined()
})
