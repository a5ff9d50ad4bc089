/** The exact form says what it has written and takes it back; a dose put into another tank is asked about there. */
import 'fake-indexeddb/auto'
import { cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { Route, Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { Dose } from '../../app/screens/Dose/Dose.tsx'
import { Tonight } from '../../app/screens/Tonight/Tonight.tsx'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { at, given } from '../support/given.ts'
import {
  blueClip,
  greenPlan,
  lab,
  limpetShelf,
  longGallery,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

beforeAll(async () => {
  await start('dose-test')
  const entries = given(
    lab,
    tankOf(longGallery, usGal(190)),
    tankOf(limpetShelf, usGal(45)),
    planOf({ first: '2027-01-06', amount: 1 }),
    onHand({ portions: 17, each: 1, frozen: '2027-01-05' }),
  ).entries()
  await takeIn(entries)
})
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: at('2027-01-06 21:10') })
})
afterEach(() => {
  cleanup()
  vi.useRealTimers()
})
/** A room's seldom part is fetched when it is first asked for. */
const patient = { timeout: 10_000 }
const press = async (name: string | RegExp) => userEvent.click(await screen.findByRole('button', { name }, patient))
const exactly = () => {
  const { hook } = memoryLocation({ path: `/dose/${greenPlan}` })
  render(
    <Router hook={hook}>
      <Route path="/dose/:plan" component={Dose} />
    </Router>,
  )
}
const left = () => currentWorld().lots.get(blueClip)?.left

test('what was written exactly is said with its tank, and taken back where it was written', async () => {
  exactly()
  await press('Note it')
  await screen.findByText(/^Noted\. Gave .*longgallery.*1.mL/)
  expect(left()).toBe(16)
  await press('Undo')
  await screen.findByText(/^Undone: Gave .*longgallery/)
  expect(screen.queryByRole('button', { name: 'Undo' })).toBeNull()
  expect(left()).toBe(17)
})

test('no part is ticked beside an amount that was typed', async () => {
  exactly()
  const all = await screen.findByRole<HTMLInputElement>('radio', { name: 'All of it' })
  expect(all.checked).toBe(true)
  const reached = screen.getByLabelText('What reached longgallery')
  await userEvent.clear(reached)
  await userEvent.type(reached, '0.4')
  expect(all.checked).toBe(false)
  await userEvent.click(all)
  expect(screen.getByLabelText<HTMLInputElement>('What reached longgallery').value).toBe('1')
  expect(all.checked).toBe(true)
})

test('into the wrong tank, above the range there: asked once, noted with why, and taken back whole', async () => {
  render(<Tonight />)
  await press(/^Dosed/)
  await screen.findByText('Noted: dosed.')
  await userEvent.click(await screen.findByText('Something else happened'))
  await press(/^Wrong tank: it went into limpetshelf/)
  await screen.findByText(/2.2 × the top of the range/)
  expect(currentWorld().history.struck.size).toBe(1)
  await press('two were stuck together')
  await press('It is so: note it')
  await screen.findByText('Noted: the other tank.')
  const moved = currentWorld().history.all.at(-1)?.fact
  expect(moved).toMatchObject({ kind: 'doseGivenOffPlan', served: [{ tank: limpetShelf }], why: 'stuck' })
  await press('Undo')
  await screen.findByText(/^Done for/)
  const again = currentWorld().history.all.at(-1)?.fact
  expect(again).toMatchObject({ kind: 'doseGiven', served: [{ tank: longGallery }] })
  expect(again).not.toHaveProperty('why')
  expect(left()).toBe(16)
}, 30_000)
