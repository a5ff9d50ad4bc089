/** Ordering on the screen: the same day everywhere, what is noted and taken back, and the card for a friend. */
import 'fake-indexeddb/auto'
import { cleanup, render, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { FoodRoutes } from '../../app/screens/Food/rooms.tsx'
import { Tonight } from '../../app/screens/Tonight/Tonight.tsx'
import { tick } from '../../app/state/clock.ts'
import { currentWorld, request, start, takeIn } from '../../app/state/store.ts'
import { cardLines } from '../../app/words/friendCard.ts'
import { noticeWords } from '../../app/words/nudges.ts'
import { orderByWords, orderLine } from '../../app/words/ordering.ts'
import { arrivalWords, spareWords } from '../../app/words/orderPage.ts'
import {
  arrivalOf,
  day,
  describeOrdering,
  friendDose,
  type Moment,
  noticesOf,
  recordOrder,
  spareOf,
  usualWishes,
  type World,
} from '../../core/index.ts'
import { at, given, london } from '../support/given.ts'
import { foodOf, greenFood, lab, mL, onHand, planOf, usGal } from '../support/givenLab.ts'

const evening = at('2026-11-25 20:00')
const story = () => {
  const book = given(
    lab,
    foodOf(greenFood, { name: 'Green food' }),
    planOf({ first: '2026-09-01', amount: 1 }),
    onHand({ portions: 19, each: 1, frozen: '2026-07-01' }),
  )
  book.does(() => describeOrdering({ leadDays: 9, cushionDays: 5 }, at('2026-08-30 12:00')))
  return book
}
beforeAll(async () => {
  await start('ordering-test')
  await takeIn(story().entries())
})
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: evening })
  tick()
})
afterEach(() => {
  cleanup()
  vi.useRealTimers()
})
const open = (path: string) => {
  const { hook } = memoryLocation({ path })
  return render(<Router hook={hook}>{path === '/' ? <Tonight /> : <FoodRoutes />}</Router>)
}
const plain = (text: string | null | undefined): string => (text ?? '').replace(/\s+/g, ' ')
const patient = { timeout: 10_000 }
const answer = () => plain(document.querySelector('.page-answer')?.textContent)
const fold = async (name: string): Promise<HTMLElement> => {
  const summary = await screen.findByText(name, { selector: 'summary span' }, patient)
  await userEvent.click(summary)
  const panel = summary.closest('details')
  if (!panel) throw new Error(`${name} stands in no fold`)
  return panel
}
const orders = () => [...(currentWorld().orders.get(greenFood) ?? [])]

const phone = { lastBackup: at('2026-11-24 12:00') as Moment }
const notices = (world: World, now: Moment) =>
  noticesOf(world, now, usualWishes(london), phone).filter(({ about }) => about === 'orderBy' || about === 'hasItCome')

test('the nudge, Tonight, the food and its page say one day in the same words, before it and long after', () => {
  const { world } = given(
    lab,
    foodOf(greenFood, { name: 'Green food' }),
    planOf({ first: '2026-11-01', amount: 1 }),
    onHand({ portions: 15, each: 1, frozen: '2026-07-01' }),
  )
  // Fifteen doses from 1 November: none on 1 December, and by a week and a week 17 November.
  const line = (now: string) =>
    plain(orderLine(world(), greenFood, { now: at(now), today: day(now.slice(0, 10)) })?.says)
  expect(line('2026-11-01 12:00')).toBe(
    'Order Green food by Tuesday, 17 November: the first night without food is 1 December.',
  )
  const now = at('2026-11-01 20:00')
  expect(notices(world(), now)).toEqual([])
  const later = given(
    lab,
    foodOf(greenFood, { name: 'Green food' }),
    planOf({ first: '2026-11-25', amount: 1 }),
    onHand({ portions: 3, each: 1, frozen: '2026-07-01' }),
  ).world()
  const [notice] = notices(later, evening)
  if (!notice) throw new Error('nothing is said')
  const today = day('2026-11-25')
  expect(noticeWords(notice, later, evening, today)).toBe(orderLine(later, greenFood, { now: evening, today })?.says)
  expect(plain(noticeWords(notice, later, evening, today))).toBe(
    'Order Green food now: the day for it was Tuesday, 17 November, and the first night without food is 1 December.',
  )
  expect(
    plain(orderByWords('Green food', { day: day('2026-11-17'), bareNight: day('2026-12-01') }, day('2026-12-20'))),
  ).toBe('Order Green food now: the day for it was Tuesday, 17 November, and nothing is left for a dose.')
})

test('an order on its way quiets the nudge until it is three days late, and then it is asked about', () => {
  const book = given(
    lab,
    foodOf(greenFood, { name: 'Green food' }),
    planOf({ first: '2026-11-25', amount: 1 }),
    onHand({ portions: 3, each: 1, frozen: '2026-07-01' }),
  )
  expect(notices(book.world(), evening).map(({ about }) => about)).toEqual(['orderBy'])
  book.does((world) =>
    recordOrder(
      world,
      { food: greenFood, on: day('2026-11-25'), comes: day('2026-11-30') },
      { now: evening, zone: london },
    ),
  )
  expect(notices(book.world(), at('2026-12-02 20:00'))).toEqual([])
  const late = at('2026-12-03 20:00')
  const [first, second] = notices(book.world(), late)
  expect([first?.about, second?.about]).toEqual(['hasItCome', 'orderBy'])
  expect(first && plain(noticeWords(first, book.world(), late, day('2026-12-03')))).toBe(
    'Has Green food come? It was to come on Monday, 30 November.',
  )
})

test('the page says the day and why, notes an order, and takes it back', async () => {
  open('/food/order')
  // Nineteen from tonight on: the last on 31 December, none on 2 January.
  expect(answer()).toBe('Order Green food by Saturday, 19 December: the first night without food is 2 January 2027.')
  screen.getByText(/9 days for an order to come and 5 to spare/)
  screen.getByText(
    (_, element) =>
      plain(element?.textContent) ===
      'You can give away 12 portions of 1 mL and never run short: what stays is enough until 9 December, and an order made today would have come.',
  )
  const panel = await fold('I have ordered it')
  await userEvent.type(within(panel).getByLabelText('To come on'), '2026-12-04')
  await userEvent.click(within(panel).getByRole('button', { name: 'I have ordered it' }))
  await screen.findByText(/^Noted: Green food ordered today/, {}, patient)
  expect(answer()).toBe('Green food is ordered, to come on Friday, 4 December.')
  expect(orders()).toMatchObject([{ on: '2026-11-25', comes: '2026-12-04' }])
  await userEvent.click(screen.getByRole('button', { name: 'Undo' }))
  await waitFor(() => expect(orders()).toEqual([]))
  expect(answer()).toMatch(/^Order Green food by/)
})

test('what is wrong with an order is said beside its field, and what was typed stays', async () => {
  open('/food/order')
  const panel = await fold('I have ordered it')
  await userEvent.type(within(panel).getByLabelText('Ordered on'), '2026-11-20')
  await userEvent.type(within(panel).getByLabelText('To come on'), '2026-11-18')
  await userEvent.click(within(panel).getByRole('button', { name: 'I have ordered it' }))
  await within(panel).findByText(/cannot come on 18.November 2026, before it was ordered on 20.November 2026/)
  expect(within(panel).getByLabelText<HTMLInputElement>('To come on').value).toBe('2026-11-18')
  await userEvent.clear(within(panel).getByLabelText('To come on'))
  await userEvent.clear(within(panel).getByLabelText('Ordered on'))
})

test('an order that is late is asked about: still waiting, or never ordered, and each can be taken back', async () => {
  open('/food/order')
  const panel = await fold('I have ordered it')
  await userEvent.type(within(panel).getByLabelText('Ordered on'), '2026-11-10')
  await userEvent.type(within(panel).getByLabelText('To come on'), '2026-11-19')
  await userEvent.click(within(panel).getByRole('button', { name: 'I have ordered it' }))
  await waitFor(() => expect(answer()).toBe('Has Green food come? It was to come on Thursday, 19 November.'), patient)
  expect(screen.getByRole('link', { name: /It has come/ }).getAttribute('href')).toBe('#/food/bottle/new')

  const waiting = await fold('Still waiting for it')
  await userEvent.click(within(waiting).getByRole('button', { name: 'Still waiting' }))
  await within(waiting).findByText('On which day? About is good enough.')
  await userEvent.type(within(waiting).getByLabelText('When is it to come now?'), '2026-12-01')
  await userEvent.click(within(waiting).getByRole('button', { name: 'Still waiting' }))
  await waitFor(() => expect(answer()).toBe('Green food is ordered, to come on Tuesday, 1 December.'), patient)

  const never = await fold('It was never ordered')
  await userEvent.click(within(never).getByRole('button', { name: 'Cross it out' }))
  await screen.findByText('Crossed out: it was never ordered.', {}, patient)
  expect(orders()).toEqual([])
  await userEvent.click(screen.getByRole('button', { name: 'Undo' }))
  await waitFor(() => expect(answer()).toBe('Green food is ordered, to come on Tuesday, 1 December.'), patient)
  const again = await fold('It was never ordered')
  await userEvent.click(within(again).getByRole('button', { name: 'Cross it out' }))
  await waitFor(() => expect(orders()).toEqual([]), patient)
})

test('her own days move the day to order by; what is no number of days is asked for beside both fields', async () => {
  open('/food/order')
  const [lead, spare] = ['Days from ordering to the door', 'Days to spare'].map((label) => screen.getByLabelText(label))
  if (!lead || !spare) throw new Error('no fields')
  await userEvent.clear(lead)
  await userEvent.clear(spare)
  await userEvent.click(screen.getByRole('button', { name: 'Save these days' }))
  expect(await screen.findAllByText('How many days? A guess will do.')).toHaveLength(2)
  await userEvent.type(lead, '20')
  await userEvent.type(spare, '0')
  await userEvent.click(screen.getByRole('button', { name: 'Save these days' }))
  await screen.findByText(/^Noted: 20 days for an order to come/, {}, patient)
  expect(answer()).toMatch(/by Sunday, 13 December/)
  await userEvent.click(screen.getByRole('button', { name: 'Undo' }))
  await waitFor(() => expect(answer()).toMatch(/by Saturday, 19 December/), patient)
})

test('days nobody is at home go on the list, are minded by the parcel, and are crossed out', async () => {
  open('/food/order')
  const panel = await fold('Put days on the list')
  await userEvent.type(within(panel).getByLabelText('First day'), '2026-12-26')
  await userEvent.type(within(panel).getByLabelText('Last day'), '2027-01-02')
  await userEvent.click(within(panel).getByRole('button', { name: 'Nobody is at home then' }))
  await screen.findByText(/^On the list:/, {}, patient)
  expect(plain(document.body.textContent)).toContain(
    'but nobody is at home from 26 December to 2 January 2027. Better to order on',
  )
  await userEvent.click(screen.getByRole('button', { name: /^Cross out: Saturday, 26/ }))
  await screen.findByText('None on the list.', {}, patient)
})

test('Tonight says it once its day has come, with the way to the page', async () => {
  const takes = (leadDays: number, cushionDays: number) =>
    request((_, { now }) => describeOrdering({ leadDays, cushionDays }, now))
  const before = open('/')
  await screen.findByText(/portion from blue clip/i, { selector: '.page-answer' }, patient)
  expect(screen.queryByRole('heading', { name: 'To order' })).toBeNull()
  before.unmount()
  await takes(60, 0)
  const { unmount } = open('/')
  await screen.findByRole('heading', { name: 'To order' }, patient)
  expect(plain(document.body.textContent)).toContain(
    'Order Green food now: the day for it was Tuesday, 3 November, and the first night without food is 2 January 2027.',
  )
  expect(screen.getByRole('link', { name: 'All about ordering' }).getAttribute('href')).toBe('#/food/order')
  unmount()
  await takes(9, 5)
})

test('a bag says what it can spare, and the card what one portion is for the friend’s tank', async () => {
  const first = open('/food/lot/blueclip')
  const panel = await fold('Give some away')
  expect(plain(panel.textContent)).toContain('You can give 12 portions of these away and never run short.')
  expect(
    within(panel)
      .getByRole('link', { name: /card for your friend/ })
      .getAttribute('href'),
  ).toBe('#/food/lot/blueclip/card')
  first.unmount()
  open('/food/lot/blueclip/card')
  await userEvent.type(screen.getByLabelText('How much water is in their tank?'), '60')
  await screen.findByText(/60 of what\?/)
  await userEvent.click(screen.getByRole('radio', { name: 'US gallons' }))
  expect(answer()).toBe('Half of a portion is one dose for a tank of 60 US gallons.')
  const shown = () => plain(document.querySelector('.friend-card')?.textContent)
  expect(shown()).toContain('Good until Saturday, 1 July 2028')
  expect(shown()).toContain('never frozen again')
  expect(shown()).toContain('NOT FOOD')
})

test('the words for arrivals, for what is to spare and for the card', () => {
  const today = day('2026-11-16')
  const ask = (on: string, away: { from: ReturnType<typeof day>; to: ReturnType<typeof day> }[] = []) =>
    plain(arrivalWords(arrivalOf({ orderedOn: day(on), leadDays: 9, away, today }), today))
  expect(ask('2026-11-16')).toBe('Ordered today, it would come about Wednesday, 25 November: a good day.')
  expect(ask('2026-11-18')).toBe(
    'Ordered on 18 November, it would come about Friday, 27 November, but a day late it would lie over the weekend. Better to order on Tuesday, 17 November, or on Saturday, 21 November.',
  )
  const none = spareOf(
    given(lab, planOf({ first: '2026-11-25', amount: 1 })).world(),
    greenFood,
    day('2026-11-25'),
    evening,
  )
  expect(plain(spareWords(none, today))).toBe('Nothing to give away: all of it is needed until an order can come.')
  const [food] = foodOf(greenFood, { name: 'Green food' })
  if (food?.kind !== 'foodDescribed') throw new Error('no food')
  const water = usGal(200)
  const dose = friendDose(mL(1), food.band, water)
  expect(cardLines({ food, each: mL(1), lastGood: day('2028-07-01'), about: false, water, dose }).map(plain)).toEqual([
    'Green food, frozen: 1 mL in each portion',
    'For 200 US gallons: One portion (1 mL), dropped in frozen.',
    'Every other night, after the lights are out. One dose a night, never two to make up for a missed one.',
    'The label’s range: 1 to 2 mL for 200 US gallons.',
    'Good until Saturday, 1 July 2028, kept frozen at −18 °C or colder.',
    'What has thawed is never frozen again.',
    'It feeds, and cannot grow: no culture can be begun with it.',
    'Fish tank. NOT FOOD for people.',
  ])
})
