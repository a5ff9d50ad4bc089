/** The pieces that screens share, by what a person sees, hears and touches. */
import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { expect, test, vi } from 'vitest'
import { BigAct } from '../../app/parts/BigAct.tsx'
import { Facts } from '../../app/parts/Facts.tsx'
import { MoreExact } from '../../app/parts/MoreExact.tsx'
import { Notice } from '../../app/parts/Notice.tsx'
import { Page } from '../../app/parts/Page.tsx'
import { Progress } from '../../app/parts/Progress.tsx'
import { Rooms } from '../../app/parts/Rooms.tsx'
import { Struck } from '../../app/parts/Struck.tsx'
import { Tray } from '../../app/parts/Tray.tsx'
import { UndoBar } from '../../app/parts/UndoBar.tsx'

test('a page opens with its answer, names the window, and moves focus to its heading', () => {
  // The first page of all is where the browser begins anyway, and leaves the focus alone.
  const { unmount } = render(<Page title="Tonight" answer="Due tonight." />)
  expect(document.activeElement).toBe(document.body)
  unmount()
  render(<Page title="Food" answer="41 portions left." />)
  expect(screen.getByRole('heading', { level: 1, name: 'Food' })).toBe(document.activeElement)
  expect(screen.getByText('41 portions left.')).toBeTruthy()
  expect(document.title).toBe('Food · Smallhours')
})

test('a new title in the same page takes focus again, a new answer does not', async () => {
  const { rerender } = render(
    <Page title="Reef tank" answer="Due tonight.">
      <button type="button">Change</button>
    </Page>,
  )
  const button = screen.getByRole('button')
  button.focus()
  rerender(
    <Page title="Reef tank" answer="Due on Thursday.">
      <button type="button">Change</button>
    </Page>,
  )
  expect(document.activeElement).toBe(button)
  rerender(<Page title="Small tank" answer="Due on Thursday." />)
  expect(document.activeElement).toBe(screen.getByRole('heading', { name: 'Small tank' }))
})

test('the room she is in is told as the current page, and the others are plain links', () => {
  render(
    <Rooms
      says="Rooms"
      name="Smallhours"
      current="water"
      rooms={[
        { id: 'tonight', label: 'Tonight', href: '#/' },
        { id: 'water', label: 'Water', href: '#/water' },
      ]}
    />,
  )
  const rooms = within(screen.getByRole('navigation', { name: 'Rooms' }))
  expect(rooms.getByRole('link', { current: 'page' }).textContent).toBe('Water')
  expect(rooms.getByRole('link', { name: 'Tonight' }).getAttribute('href')).toBe('#/')
})

test('the big act answers once, and keeps its focus while it is busy and when it is done', async () => {
  const onAct = vi.fn()
  const { rerender } = render(<BigAct label="Dosed" sub="One portion" state="ready" onAct={onAct} />)
  const act = screen.getByRole('button', { name: /Dosed/ })
  await userEvent.click(act)
  rerender(<BigAct label="Dosed" state="busy" onAct={onAct} />)
  await userEvent.click(act)
  rerender(<BigAct label="Dosed" state="done" onAct={onAct} />)
  await userEvent.keyboard('{Enter}')
  expect(onAct).toHaveBeenCalledTimes(1)
  expect(document.activeElement).toBe(act)
  expect(act.getAttribute('aria-disabled')).toBe('true')
})

test('undo is announced, stands until its moment, and then is gone', async () => {
  const onUndo = vi.fn()
  const bar = (until: number | null, now: number) => (
    <UndoBar until={until} now={now} says="Dosed for Saturday night." undo="Undo" onUndo={onUndo} />
  )
  const { rerender } = render(bar(null, 5_000))
  const status = screen.getByRole('status')
  expect(status.textContent).toBe('')
  rerender(bar(15_000, 5_000))
  expect(status.textContent).toBe('Dosed for Saturday night.')
  await userEvent.click(screen.getByRole('button', { name: 'Undo' }))
  expect(onUndo).toHaveBeenCalledTimes(1)
  rerender(bar(15_000, 14_999))
  expect(screen.getByRole('button', { name: 'Undo' })).toBeTruthy()
  rerender(bar(15_000, 15_000))
  expect(screen.queryByRole('button')).toBeNull()
  expect(status.textContent).toBe('')
})

/** Wells of a sort, each begun with a stroke of its own. */
const drawn = (container: HTMLElement, sort: 'full' | 'empty'): number =>
  (container.querySelector(`.tray-${sort}`)?.getAttribute('d') ?? '').split('M').length - 1

test('a tray empties from the end, and says in words what it shows', () => {
  const { container } = render(<Tray rows={3} columns={4} filled={7} next says="Tray 3: 7 of 12 wells are full." />)
  expect(screen.getByRole('img', { name: 'Tray 3: 7 of 12 wells are full.' })).toBeTruthy()
  expect([drawn(container, 'full'), drawn(container, 'empty')]).toEqual([7, 5])
  expect(container.querySelectorAll('.tray-next')).toHaveLength(1)
})

test('a tray that the book has over-drawn or over-filled is drawn empty or full', () => {
  const { container, rerender } = render(<Tray rows={2} columns={2} filled={-3} next says="Empty" />)
  expect([drawn(container, 'full'), drawn(container, 'empty')]).toEqual([0, 4])
  rerender(<Tray rows={2} columns={2} filled={9} says="Full" />)
  expect([drawn(container, 'full'), drawn(container, 'empty')]).toEqual([4, 0])
})

test('a tray is drawn the same each time', () => {
  const first = render(<Tray rows={5} columns={6} filled={13} says="13" />).container.innerHTML
  const second = render(<Tray rows={5} columns={6} filled={13} says="13" />).container.innerHTML
  expect(second).toBe(first)
})

test('only a refusal interrupts', () => {
  render(
    <>
      <Notice>Nothing is due.</Notice>
      <Notice kind="caution">Dry your hands.</Notice>
      <Notice kind="refusal">The tray is empty.</Notice>
    </>,
  )
  expect(screen.getAllByRole('note')).toHaveLength(2)
  expect(screen.getByRole('alert').textContent).toBe('The tray is empty.')
})

test('what is crossed out is still there, and is said to be', () => {
  render(<Struck says="Crossed out:">Two portions</Struck>)
  expect(screen.getByText('Two portions').textContent).toBe('Crossed out: Two portions')
})

test('a fact is tied to its term, its note with it', () => {
  render(<Facts facts={[{ term: 'Fridge bottle', fact: '62 mL', note: 'use within 6 days' }]} />)
  expect(screen.getByRole('term').textContent).toBe('Fridge bottle')
  expect(screen.getAllByRole('definition').map((fact) => fact.textContent)).toEqual(['62 mL', 'use within 6 days'])
})

test('a long task says how far it is', () => {
  render(<Progress label="Reading the file" done={640} of={1000} says="640 of 1000 entries" />)
  const bar = screen.getByRole('progressbar', { name: 'Reading the file' })
  expect([bar.getAttribute('value'), bar.getAttribute('max')]).toEqual(['640', '1000'])
})

test('what makes it more exact is closed at first and opens by its label', async () => {
  const { container } = render(<MoreExact label="Make it more exact">Rock and sand</MoreExact>)
  const details = container.querySelector('details')
  expect(details?.open).toBe(false)
  await userEvent.click(screen.getByText('Make it more exact'))
  expect(details?.open).toBe(true)
})
