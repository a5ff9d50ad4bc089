/** What has happened can always be noted: much too much of it, and once more. With the real storage underneath. */
import 'fake-indexeddb/auto'
import { cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { Tonight } from '../../app/screens/Tonight/Tonight.tsx'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { day } from '../../core/index.ts'
import { at, given } from '../support/given.ts'
import {
  blueClip,
  bottleOf,
  firstBottle,
  greenPlan,
  lab,
  longGallery,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

beforeAll(async () => {
  await start('tonight-test')
  const entries = given(
    lab,
    tankOf(longGallery, usGal(10)),
    planOf({ first: '2027-01-06', amount: 1 }),
    bottleOf({ holds: 30, opened: '2026-10-30' }),
    onHand({ portions: 17, each: 1.2, frozen: '2027-01-05' }),
  ).entries()
  await takeIn(entries)
})
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: at('2027-01-06 20:10') })
})
afterEach(() => {
  cleanup()
  vi.useRealTimers()
})
const press = async (name: string | RegExp) => userEvent.click(await screen.findByRole('button', { name }))

test('one portion that is twelve times the range of a tank made smaller since is noted with a word of why', async () => {
  render(<Tonight />)
  await press(/^Dosed/)
  const asked = await screen.findByText(/12 × the top/)
  // The act is gone while it is asked about; the focus is where the question is.
  expect(document.activeElement?.contains(asked)).toBe(true)
  expect(document.activeElement).not.toBe(document.body)
  await press('It is so: note it')
  await screen.findByText('A word or two, please.')
  expect(currentWorld().lots.get(blueClip)?.left).toBe(17)
  await userEvent.type(screen.getByLabelText('How did it come about?'), 'smallest I have')
  await press('It is so: note it')
  await screen.findByText('Noted: dosed.')
  expect(currentWorld().history.all.at(-1)?.fact).toMatchObject({ kind: 'doseGiven', why: 'smallest I have' })
})

test('another one in the same night is asked about, and noted', async () => {
  vi.setSystemTime(at('2027-01-06 20:40'))
  render(<Tonight />)
  await userEvent.click(await screen.findByText('Something else happened'))
  await press('Dosed once more')
  await press('That was another one: note it too')
  await userEvent.type(await screen.findByLabelText('How did it come about?'), 'two stuck together')
  await press('It is so: note it')
  await screen.findByText('Noted: dosed.')
  expect(currentWorld().lots.get(blueClip)?.left).toBe(15)
  expect(currentWorld().nights.get(greenPlan)?.get(day('2027-01-06'))).toHaveLength(2)
  await screen.findByText(
    /^2.4.mL is over the range for this tank\. As it stands, the next dose waits until 10.January instead of 8.January\./,
  )
  await press(/^Keep 8.January$/)
  await screen.findByText('Noted.')
  expect(screen.queryByText(/is over the range for this tank/)).toBeNull()
  expect(currentWorld().history.all.at(-1)?.fact).toMatchObject({ kind: 'nextNightChosen', next: '2027-01-08' })
})

test('a bottle past its day is never proposed, and noted when it is what she took', async () => {
  vi.setSystemTime(at('2027-01-08 20:10'))
  render(<Tonight />)
  await userEvent.click(await screen.findByText('Something else happened'))
  await press(/^Took 1.mL from the 30.mL bottle, kitchen, past its day$/)
  await screen.findByText('Nine days past its usual time: sniff and look.')
  expect(currentWorld().bottles.get(firstBottle)?.left).toBe(30_000)
  await press('It is so: note it')
  await screen.findByText('Noted: dosed.')
  expect(currentWorld().bottles.get(firstBottle)?.left).toBe(29_000)
})
