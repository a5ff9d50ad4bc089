/** The thaw page keeps what was said through a reload; a food's contents read back as they were typed. */
import 'fake-indexeddb/auto'
import { cleanup, render, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { FoodRoutes } from '../../app/screens/Food/rooms.tsx'
import { flushDrafts } from '../../app/state/drafts.ts'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { nutrientWords } from '../../app/words/tooMuch.ts'
import { at, given } from '../support/given.ts'
import { blueClip, greenFood, kitchenFreezer, lab, onHand, planOf, redClip } from '../support/givenLab.ts'

beforeAll(async () => {
  await start('trouble-test')
  await takeIn(
    given(
      lab,
      planOf({ first: '2027-07-03', amount: 1 }),
      onHand({ portions: 31, each: 1, frozen: '2026-09-04' }),
      onHand({ portions: 22, each: 1, frozen: '2026-10-05', lot: redClip }),
    ).entries(),
  )
})
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: at('2027-07-03 12:00') })
})
afterEach(() => {
  cleanup()
  vi.useRealTimers()
})
const patient = { timeout: 10_000 }
const open = (path: string) => {
  const { hook } = memoryLocation({ path })
  render(
    <Router hook={hook}>
      <FoodRoutes />
    </Router>,
  )
}
const bag = (name: RegExp) => within(screen.getByRole('radiogroup', { name }))

test('answers bag by bag stand again when the page is opened anew, and are one report', async () => {
  open(`/food/place/${kitchenFreezer}/thaw`)
  await userEvent.click(await screen.findByRole('radio', { name: 'One by one' }, patient))
  expect(screen.getByText('These hours are common practice; your food’s label goes first.')).toBeDefined()
  await userEvent.click(bag(/^blue clip/).getByRole('radio', { name: 'Thawed, but cold' }))
  await screen.findByText(/30 are for the bin or for feeding a culture/)
  await flushDrafts()
  cleanup()

  open(`/food/place/${kitchenFreezer}/thaw`)
  await waitFor(
    () =>
      expect(bag(/^blue clip/).getByRole<HTMLInputElement>('radio', { name: 'Thawed, but cold' }).checked).toBe(true),
    patient,
  )
  await userEvent.click(screen.getByRole('button', { name: 'Note it so' }))
  // One bag has no answer yet, and says so; nothing is written.
  expect(screen.getAllByText(/How was it found\?/).length).toBeGreaterThan(0)
  expect(currentWorld().lots.get(blueClip)?.meltedOn).toBeUndefined()
  await userEvent.click(bag(/^redclip/).getByRole('radio', { name: /I can’t tell/ }))
  await userEvent.click(screen.getByText(/How long it was off/))
  await userEvent.type(screen.getByLabelText(/How long, as far as you know/), '30')
  await userEvent.click(screen.getByRole('button', { name: 'Note it so' }))
  await screen.findByText(/It is in the diary/, undefined, patient)
  expect(currentWorld().history.all.at(-1)?.fact).toMatchObject({ kind: 'freezerThawed', minutesOff: 1800 })
  expect(currentWorld().lots.get(redClip)?.aside?.because).toBe('notKnown')
}, 30_000)

test('what a label says is in a food is kept, and stands there when the form opens again', async () => {
  open(`/food/kind/${greenFood}`)
  await userEvent.click(await screen.findByText('What is in it'))
  await userEvent.click(screen.getByRole('radio', { name: 'Cells' }))
  await userEvent.type(screen.getByLabelText(/Cells in a millilitre/), '1000')
  await userEvent.click(screen.getByRole('button', { name: 'Save its figures' }))
  await userEvent.type(screen.getByLabelText(/What one cell weighs/), '6,1')
  await userEvent.type(screen.getByLabelText(/Nitrogen in the dry matter/), '6.3')
  await userEvent.click(screen.getByRole('button', { name: 'Save its figures' }))
  await waitFor(() =>
    expect(currentWorld().foods.get(greenFood)?.at(-1)?.contents).toEqual({
      cells: 1e9,
      cellPicograms: 6.1,
      nitrogen: 0.063,
    }),
  )
  cleanup()
  open(`/food/kind/${greenFood}`)
  await waitFor(() => expect(screen.getByLabelText<HTMLInputElement>(/Nitrogen in the dry matter/).value).toBe('6.3'))
}, 30_000)

test('an estimate is said with the figures it has, and no more', () => {
  const same = (value: number) => ({ low: value, high: value })
  expect(nutrientWords({ dry: 6000, nitrate: same(3.984), phosphate: same(0.4139) })).toBe(
    'Nitrate at most 3.98 ppm more, phosphate at most 0.41 ppm more.',
  )
  expect(nutrientWords({ dry: 30, nitrate: { low: 0.04258, high: 0.0623 }, phosphate: same(0.004076) })).toBe(
    'Nitrate at most 0.043 to 0.062 ppm more, phosphate at most 0.0041 ppm more.',
  )
})
