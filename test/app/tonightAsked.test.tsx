/** While a dose is asked about, the answer is the act; and what is put right is what was noted last. */
import 'fake-indexeddb/auto'
import { cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterAll, afterEach, beforeAll, expect, test, vi } from 'vitest'
import { Route, Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { Dose } from '../../app/screens/Dose/Dose.tsx'
import { Tonight } from '../../app/screens/Tonight/Tonight.tsx'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { giveDose } from '../../core/index.ts'
import { at, type Book, given } from '../support/given.ts'
import {
  blueClip,
  cockle,
  greenPlan,
  lab,
  longGallery,
  mL,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

let book: Book
beforeAll(async () => {
  vi.useFakeTimers({ toFake: ['Date'], now: at('2027-01-06 20:10') })
  await start('tonight-asked-test')
  book = given(
    lab,
    tankOf(longGallery, usGal(100)),
    tankOf(cockle, usGal(100)),
    planOf({ first: '2027-01-06', amount: 0.7 }),
    onHand({ portions: 17, each: 0.7, frozen: '2027-01-05' }),
  )
  await takeIn(book.entries())
})
afterEach(cleanup)
afterAll(() => void vi.useRealTimers())
const press = async (name: string | RegExp) => userEvent.click(await screen.findByRole('button', { name }))
const buttons = (name: string | RegExp) => screen.queryAllByRole('button', { name })

test('on the exact page the question takes the place of “Note it”, and asks why once', async () => {
  const { hook } = memoryLocation({ path: `/dose/${greenPlan}` })
  render(
    <Router hook={hook}>
      <Route path="/dose/:plan" component={Dose} />
    </Router>,
  )
  const count = await screen.findByLabelText('How many portions were taken?')
  await userEvent.clear(count)
  await userEvent.type(count, '2')
  expect(screen.getAllByRole('group', { name: /^Why/ })).toHaveLength(1)
  await press('Note it')
  await screen.findByRole('button', { name: 'It is so: note it' })
  expect(buttons('Note it')).toEqual([])
  expect(screen.getAllByRole('group', { name: /^Why/ })).toHaveLength(1)
  await press('Leave it')
  expect(buttons('Note it')).toHaveLength(1)
  expect(screen.getAllByRole('group', { name: /^Why/ })).toHaveLength(1)
})

test('on Tonight there is no “Dosed” beside the question, and its own answer is the main act', async () => {
  render(<Tonight />)
  await userEvent.click(await screen.findByText('Something else happened'))
  expect(buttons(/^Dosed/)).toHaveLength(1)
  await press('Gave two')
  const sure = await screen.findByRole('button', { name: 'It is so: note it' })
  expect(sure.dataset.kind).toBe('primary')
  expect(buttons(/^Dosed/)).toEqual([])
  await press('Leave it')
  expect(buttons(/^Dosed/)).toHaveLength(1)
})

test('of two doses the one noted last is put right, whatever time it was written down for', async () => {
  const note = (when: string, again = false) =>
    book.does((world) => {
      const taken = [{ from: 'portions', lot: blueClip, count: 1 }] as const
      const asked = { plan: greenPlan, taken, amount: mL(0.7), at: at(when), again, sure: true }
      return giveDose(world, asked, at('2027-01-06 20:09'))
    })
  note('2027-01-06 20:05')
  const [last] = note('2027-01-06 18:30', true)
  await takeIn(book.entries())
  render(<Tonight />)
  await userEvent.click(await screen.findByText('Something else happened'))
  await screen.findByText(/^Noted last: 0\.7.mL at 18:30\.$/)
  await press('Wrong tank: it went into cockle')
  await screen.findByText('Noted: the other tank.')
  expect([...currentWorld().history.struck.keys()]).toEqual([last])
})
