/** A parcel of several things, from the bottle that came in it to its share of the price, with the real storage underneath. */
import 'fake-indexeddb/auto'
import { cleanup, render, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, expect, test } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { FoodRoutes } from '../../app/screens/Food/rooms.tsx'
import { currentWorld, start } from '../../app/state/store.ts'
import { sheetLines } from '../../app/words/closing.ts'
import { cost, price } from '../../app/words/money.ts'
import { purseWords, unknownPrices } from '../../app/words/year.ts'
import { bottleCost, moment } from '../../core/index.ts'

beforeAll(() => start('money-test'))
afterEach(cleanup)

const open = (path: string) => {
  const { hook, history, navigate } = memoryLocation({ path, record: true })
  const { unmount } = render(
    <Router hook={hook}>
      <FoodRoutes />
    </Router>,
  )
  return { go: navigate, at: () => history.at(-1) ?? '', close: unmount }
}
const press = async (name: string | RegExp) => userEvent.click(await screen.findByRole('button', { name }))
const replace = async (label: string | RegExp, text: string) => {
  const field = await screen.findByLabelText(label)
  await userEvent.clear(field)
  if (text) await userEvent.type(field, text)
}
/** Of one thing in the parcel, named by its group. */
const ofThing = (name: RegExp, label: string) =>
  within(screen.getByRole('group', { name })).getByLabelText<HTMLInputElement>(label)
const replaceOf = async (name: RegExp, label: string, text: string) => {
  await userEvent.clear(ofThing(name, label))
  await userEvent.type(ofThing(name, label), text)
}
const share = 'Share, with postage'
const alone = 'Price if bought alone'
const green = /^The 120.mL bottle of green food$/
const live = /^Live bottles$/
const costNow = () => {
  const [bottle] = currentWorld().bottles.values()
  return bottle && bottleCost(currentWorld(), bottle, moment(Date.now()))
}

test('a pack of six live bottles and one of food is shared by what each costs alone, put right, and taken back', async () => {
  const room = open('/food/bottle/new')
  await replace('What do you call it?', 'green food')
  await replace('How large is the bottle?', '120')
  await userEvent.click(screen.getByText(/Dates, price, place/))
  await userEvent.click(screen.getByRole('radio', { name: 'It came in a parcel with other things' }))
  await press('Put it on record')
  await waitFor(() => expect(room.at()).toMatch(/^\/food\/purchase\/new\/[0-9a-v]{16}$/))
  expect(costNow()).toBe('notKnown')

  // Everything wrong is said at once, and nothing typed is lost.
  await replace('What else was in it?', '')
  await replace('How many?', '2,5')
  await press('Put the parcel on record')
  await screen.findByText('What is it? A word or two are enough.')
  screen.getByText('A whole number from 1 to 1,000, please.')
  screen.getByText('Nothing is entered here yet.')
  expect(screen.getByLabelText('How many?')).toHaveProperty('value', '2,5')

  await replace('What else was in it?', 'live bottles')
  await replace('How many?', '6')
  await replace('All of it, without postage', '84')
  await userEvent.click(screen.getByText(/^In /, { selector: 'summary span' }))
  await replace('Currency', 'GBP')
  await replaceOf(green, alone, '30')
  const offers = within(screen.getByRole('group', { name: 'Ways to share it' }))
  offers.getByText('£30.00 and £54.00')
  offers.getByText('£12.00 and £72.00')
  offers.getByText('£84.00 and free')
  await replaceOf(green, share, '30')
  await screen.findByText('£84.00 in all; £54.00 not shared yet.')
  await press('By what each costs alone')
  expect(ofThing(live, share).value).toBe('54')
  await screen.findByText('£84.00 in all, all of it shared.')
  await press('Put the parcel on record')
  await waitFor(() => expect(room.at()).toMatch(/^\/food\/purchase\/[0-9a-v]{16}$/))
  await screen.findByText(/£84.00 for the 120.mL bottle of green food and 6.× live bottles\./)
  expect(costNow()).toEqual({ minor: 3000, currency: 'GBP' })

  await userEvent.click(screen.getByText('Put it right', { selector: 'summary span' }))
  await replaceOf(green, share, '40')
  await press('Put it right')
  await screen.findByText('£10.00 more is shared out than was paid.')
  await replaceOf(live, share, '44')
  await press('Put it right')
  await waitFor(() => expect(costNow()).toEqual({ minor: 4000, currency: 'GBP' }))
  await press('Undo')
  await waitFor(() => expect(costNow()).toEqual({ minor: 3000, currency: 'GBP' }))
}, 40_000)

test('what was typed of a parcel is there again after the app was closed, what things cost alone too', async () => {
  const before = open('/food/purchase/new')
  await userEvent.click(await screen.findByRole('button', { name: 'Something else was in it' }))
  await replaceOf(live, alone, '9,50')
  await replace('All of it, without postage', '19')
  before.close()
  open('/food/purchase/new')
  await waitFor(() => expect(ofThing(live, alone).value).toBe('9,50'))
  expect(screen.getByLabelText('All of it, without postage')).toHaveProperty('value', '19')
  await userEvent.click(screen.getByText(/^In /, { selector: 'summary span' }))
  await replace('Postage', '3')
  await replace('Postage was paid in another currency', 'CHF')
  await screen.findByText(/and CHF cannot be added together/)
}, 20_000)

test('a dose has three decimals everywhere and a sum two, in whatever currency', () => {
  expect(cost({ minor: 15, currency: 'GBP' })).toBe('£0.150')
  expect(cost({ minor: 4350 / 108, currency: 'GBP' })).toBe('£0.403')
  expect(price({ minor: 6843.75, currency: 'GBP' })).toBe('£68.44')
  expect(
    purseWords(
      new Map([
        ['GBP', 9350],
        ['EUR', 1200],
      ]),
    ),
  ).toBe('£93.50 and €12.00')
  expect(unknownPrices({ unpricedBottles: 1, unpricedParcels: 0 })).toBe('One bottle’s price is not known.')
})

test('the sheet names a gap with its sign', () => {
  const sheet = {
    given: 98_000,
    lost: 4_000,
    binned: 0,
    givenAway: 0,
    there: 0,
    fresh: 14_000,
    stillIn: 0,
    residue: 3_600,
    over: 400,
    spilt: 0,
    thrown: 0,
    drips: 0,
    unexplained: -1_000,
  }
  const portions = { made: 102, given: 98, lost: 4, binned: 0, givenAway: 0, there: 0, missing: 0 }
  const told = { sheet, portions, sizes: [1000] }
  const plain = sheetLines(told).map((line) => line.join(': ').replace(/\u00a0/g, ' '))
  expect(plain).toEqual([
    '98 portions of 1 mL to a tank: 98 mL',
    'Fresh doses: 14 mL',
    '4 portions lost: 4 mL',
    'Stayed on its walls: 3.6 mL',
    'Too little for a dose: 0.4 mL',
    'Unexplained: more than the book knew of: −1 mL',
  ])
})
