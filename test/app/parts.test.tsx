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

const holding = (of: number, full: number): readonly boolean[] => Array.from({ length: of }, (_, well) => well < full)

test('a tray shows each well as it is, and says in words what it shows', () => {
  const wells = [true, false, true, true, false, true]
  const { container } = render(<Tray rows={2} columns={3} wells={wells} next={5} says="4 of 6 wells are full." />)
  expect(screen.getByRole('img', { name: '4 of 6 wells are full.' })).toBeTruthy()
  expect([drawn(container, 'full'), drawn(container, 'empty')]).toEqual([4, 2])
  expect(container.querySelectorAll('.tray-next')).toHaveLength(1)
  expect(screen.queryByRole('button')).toBeNull()
})

test('a tray is drawn the same each time', () => {
  const first = render(<Tray rows={5} columns={6} wells={holding(30, 13)} says="13" />).container.innerHTML
  const second = render(<Tray rows={5} columns={6} wells={holding(30, 13)} says="13" />).container.innerHTML
  expect(second).toBe(first)
})

/** One outline a piece: each begins with a stroke of its own. */
const pieces = (container: HTMLElement): number =>
  (container.querySelector('.tray-rim')?.getAttribute('d') ?? '').split('M').length - 1
const wide = (container: HTMLElement): number =>
  Number(container.querySelector('svg')?.getAttribute('viewBox')?.split(' ')[2])

test('a cut tray is drawn in pieces with a gap between them, whatever order the cuts are told in', () => {
  const whole = render(<Tray rows={2} columns={5} wells={holding(10, 10)} says="whole" />).container
  const cut = render(<Tray rows={2} columns={5} wells={holding(10, 10)} cuts={[4, 2, 2]} says="cut" />).container
  const odd = render(<Tray rows={2} columns={5} wells={holding(10, 10)} cuts={[0, 5, 9]} says="odd" />).container
  expect([pieces(whole), pieces(cut), pieces(odd)]).toEqual([1, 3, 1])
  expect(wide(cut) - wide(whole)).toBe(12)
  expect(wide(odd)).toBe(wide(whole))
})

test('the wells of a tray are keys that say where they are and what they hold, one stop for the Tab key', async () => {
  const touched: number[] = []
  const wells = [true, true, true, false, true, false]
  const onWell = (well: number) => touched.push(well)
  render(<Tray rows={2} columns={3} wells={wells} next={4} says="The open tray" onWell={onWell} />)
  expect(screen.getByRole('group', { name: 'The open tray' })).toBeTruthy()
  expect(screen.getAllByRole('button').map((key) => key.tabIndex)).toEqual([-1, -1, -1, -1, 0, -1])
  await userEvent.tab()
  expect(document.activeElement?.getAttribute('aria-label')).toBe('Row 2, well 2: holds a portion')
  await userEvent.keyboard('{ArrowUp}')
  expect(document.activeElement?.getAttribute('aria-label')).toBe('Row 1, well 2: holds a portion')
  await userEvent.keyboard('{End}{ArrowRight}')
  expect(document.activeElement?.getAttribute('aria-label')).toBe('Row 1, well 3: holds a portion')
  await userEvent.keyboard('{Enter}')
  await userEvent.click(screen.getByRole('button', { name: 'Row 2, well 1: empty' }))
  expect(touched).toEqual([2, 3])
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
