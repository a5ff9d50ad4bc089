/** What does not add up is asked calmly, and every way to settle it is an entry. */
import 'fake-indexeddb/auto'
import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeAll, expect, test } from 'vitest'
import { PleaseCheck } from '../../app/screens/PleaseCheck.tsx'
import { waysOf } from '../../app/screens/settling.ts'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { day, type Oddity, ok } from '../../core/index.ts'
import { at, bookOf, given, kitchenPhone } from '../support/given.ts'
import { blueClip, dose, firstBottle, greenPlan, lab, onHand, planOf, portionOf } from '../support/givenLab.ts'

const twice = () => {
  const book = given(
    lab,
    planOf({ first: '2026-06-10', amount: 1.3 }),
    onHand({ portions: 19, each: 1.3, frozen: '2026-05-04' }),
  )
  const kitchen = bookOf(kitchenPhone, book.entries())
  book.does(dose(at('2026-06-10 21:42')))
  kitchen.does(dose(at('2026-06-10 22:07')))
  return [...new Map([...book.entries(), ...kitchen.entries()].map((entry) => [entry.id, entry])).values()]
}

beforeAll(() => start())

test('nothing is shown while there is nothing to ask', () => {
  const { container } = render(<PleaseCheck />)
  expect(container.textContent).toBe('')
})

test('a night logged twice shows both entries, and one touch crosses out the later', async () => {
  const entries = twice()
  expect(await takeIn(entries)).toMatchObject(ok({ added: entries.length }))
  render(<PleaseCheck />)
  const section = within(screen.getByRole('region', { name: 'Please check' }))
  expect(await section.findByText(/^Logged twice\?/)).toBeTruthy()
  expect(section.getAllByText(/^Gave longgallery/)).toHaveLength(2)
  await userEvent.click(section.getByRole('button', { name: 'One dose: cross out the later one' }))
  const noted = await screen.findByText('Noted. Nothing is left to check.')
  expect(document.activeElement).toBe(noted)
  const { history, lots } = currentWorld()
  expect([...history.struck.keys()]).toEqual([entries.at(-1)?.id])
  expect(lots.get(blueClip)?.left).toBe(18)
})

test('more taken than the book had is found again in the number that was short', async () => {
  const entries = given(
    lab,
    planOf({ first: '2026-06-10', amount: 1.3 }),
    onHand({ portions: 19, each: 1.3, frozen: '2026-05-04' }),
  ).entries()
  const book = bookOf(kitchenPhone, entries)
  book.does(dose(at('2026-07-12 21:33'), portionOf(blueClip, 0.05, 23)))
  expect(await takeIn(book.entries())).toMatchObject({ ok: true })
  render(<PleaseCheck />)
  const found = await screen.findByRole('button', { name: /^I found \d+ more$/ })
  expect(screen.getByRole('link', { name: 'Count it' }).getAttribute('href')).toBe(`#/food/lot/${blueClip}`)
  await userEvent.click(found)
  await screen.findByText('Noted. Nothing is left to check.')
  expect(currentWorld().lots.get(blueClip)?.left).toBe(0)
})

test('every question can be left as it stands', () => {
  const [entry] = twice().slice(-1)
  const id = entry?.id
  if (id === undefined) throw new Error('no entry')
  const seen = { entry: id, at: at('2026-06-11 08:15'), found: 3, bookThen: 4, bookNow: 5 }
  const lot = blueClip
  const asked: readonly Oddity[] = [
    { what: 'trayEmptierThanBook', key: 'a', entries: [id], lot, short: 2 },
    { what: 'countGapMoved', key: 'b', entries: [id], of: 'portions', thing: lot, seen },
    { what: 'unknownStock', key: 'c', entries: [id], thing: lot },
    { what: 'aheadOfItsWriting', key: 'd', entries: [id] },
    { what: 'unknownPlan', key: 'e', entries: [id], plan: greenPlan },
    { what: 'doseSetAside', key: 'f', entries: [id] },
    { what: 'twoBodies', key: 'g', entries: [id], clash: id },
    { what: 'newerEntries', key: 'h', entries: [id], count: 1 },
    { what: 'loggedTwice', key: 'i', entries: [id], plan: greenPlan, night: day('2026-06-10'), more: 0 },
    { what: 'bottleEmptierThanBook', key: 'j', entries: [id], bottle: firstBottle, short: 7 },
  ]
  const now = at('2026-06-11 08:16')
  const settles = asked.map((oddity) =>
    waysOf(oddity, [], { world: currentWorld(), now }).flatMap((way) => {
      const answer = 'ask' in way ? way.ask(currentWorld(), { now }) : undefined
      return answer?.ok ? answer.value.filter(({ kind }) => kind === 'questionSettled') : []
    }),
  )
  expect(settles).toEqual(
    asked.map(({ key }) => [{ kind: 'questionSettled', at: now, question: key, answer: 'asItStands' }]),
  )
})
