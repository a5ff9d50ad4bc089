/** "Undo" takes back what was done last, while the disk is still busy with the form it was done in. */
import 'fake-indexeddb/auto'
import { cleanup, render, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { FoodRoutes } from '../../app/screens/Food/rooms.tsx'
import { openDraft } from '../../app/state/drafts.ts'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { at, given } from '../support/given.ts'
import { blueClip, lab, onHand } from '../support/givenLab.ts'

/** Holds up whatever clears a draft on the disk. */
const disk = vi.hoisted(() => ({ free: Promise.resolve() }))
vi.mock(import('../../app/storage/drafts.ts'), async (original) => {
  const real = await original()
  return {
    ...real,
    dropDraft: async (...asked) => {
      await disk.free
      return real.dropDraft(...asked)
    },
  }
})
const holdUp = (): (() => void) => {
  let goOn = () => {}
  disk.free = new Promise((resolve) => {
    goOn = resolve
  })
  return goOn
}

beforeAll(async () => {
  await start('undo-test')
  await takeIn(given(lab, onHand({ portions: 31, each: 1, frozen: '2026-09-04' })).entries())
})
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: at('2027-07-03 12:00') })
})
afterEach(() => {
  cleanup()
  vi.useRealTimers()
})

/** The gifts on record, the first given first: true where it was taken back. */
const gifts = () => {
  const { all, struck } = currentWorld().history
  return all.filter(({ fact }) => fact.kind === 'portionsGivenAway').map(({ id }) => struck.has(id))
}
const press = async (name: string | RegExp) => userEvent.click(await screen.findByRole('button', { name }))

test('a second gift is what "Undo" takes back as soon as it is written, not the first', async () => {
  const { hook } = memoryLocation({ path: `/food/lot/${blueClip}` })
  render(
    <Router hook={hook}>
      <FoodRoutes />
    </Router>,
  )
  await userEvent.click(await screen.findByText('Give some away', undefined, { timeout: 10_000 }))
  await press(/^Give .* away$/)
  await waitFor(() => expect(gifts()).toEqual([false]))
  await screen.findByRole('button', { name: 'Undo' })

  const goOn = holdUp()
  await userEvent.click(screen.getByText('Give some away'))
  await press(/^Give .* away$/)
  await waitFor(() => expect(gifts()).toEqual([false, false]))
  await press('Undo')
  await waitFor(() => expect(gifts()).toContain(true))
  expect(gifts()).toEqual([false, true])
  goOn()
}, 20_000)

test('a form opened anew while the one before it is being cleared begins empty', async () => {
  const before = openDraft('slowly', { text: '' })
  before.change({ text: 'two portions' })
  await before.flush()
  const goOn = holdUp()
  const cleared = before.clear()
  const after = openDraft('slowly', { text: '' })
  goOn()
  await cleared
  await expect.poll(() => after.state().ready).toBe(true)
  expect(after.state()).toEqual({ fields: { text: '' }, ready: true })
})
