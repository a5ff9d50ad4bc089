/** A plan's form and a tank's, with the real storage underneath. */
import 'fake-indexeddb/auto'
import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { WaterRoutes } from '../../app/screens/Water/rooms.tsx'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { at, bookOf, given, kitchenPhone } from '../support/given.ts'
import { greenFood, greenPlan, lab, longGallery, planOf } from '../support/givenLab.ts'

const book = given(lab)
beforeAll(async () => {
  await start('plan-test')
  await takeIn(book.entries())
})
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: at('2027-01-06 20:10') })
})
afterEach(() => {
  vi.useRealTimers()
})
const open = (path: string) => {
  const { hook } = memoryLocation({ path })
  return render(
    <Router hook={hook}>
      <WaterRoutes />
    </Router>,
  )
}

test('a plan that arrives from another phone while the form is open is changed, not doubled', async () => {
  const { unmount } = open(`/water/plan/${longGallery}/${greenFood}`)
  const amount = await screen.findByLabelText('One dose')
  await userEvent.clear(amount)
  await userEvent.type(amount, '1,25')
  const kitchen = bookOf(kitchenPhone, book.entries())
  kitchen.note(planOf({ first: '2027-01-06', amount: 1 }))
  await takeIn(kitchen.entries())
  await userEvent.click(screen.getByRole('button', { name: 'Save the plan' }))
  await vi.waitFor(() => expect(currentWorld().plans.get(greenPlan)).toHaveLength(2))
  expect(currentWorld().plans.size).toBe(1)
  unmount()
})

test('a vast tank is asked about, and the question goes with the answer', async () => {
  open(`/water/tank/${longGallery}`)
  const water = await screen.findByLabelText('How much water is in it?')
  await userEvent.clear(water)
  await userEvent.type(water, '20000')
  await userEvent.click(screen.getByRole('button', { name: 'Save' }))
  await screen.findByText(/bigger than a van/)
  await userEvent.click(screen.getByRole('button', { name: 'Yes, it is that big' }))
  expect(screen.queryByText(/bigger than a van/)).toBeNull()
})
