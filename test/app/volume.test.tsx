/** The measurements of a tank's form: what is asked, and the volume that follows while they are typed. */
import 'fake-indexeddb/auto'
import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeAll, expect, test } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { WaterRoutes } from '../../app/screens/Water/rooms.tsx'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { given } from '../support/given.ts'
import { lab, longGallery } from '../support/givenLab.ts'

beforeAll(async () => {
  await start('volume-test')
  await takeIn(given(lab).entries())
})
const open = () => {
  const { hook } = memoryLocation({ path: `/water/tank/${longGallery}` })
  return render(
    <Router hook={hook}>
      <WaterRoutes />
    </Router>,
  )
}
const choose = (name: string) => userEvent.click(screen.getByRole('radio', { name }))
/** At once: a key at a time is slow here, and the browser's test does it. */
const type = async (label: string, typed: string) => {
  const field = screen.getByLabelText(label)
  await userEvent.clear(field)
  await userEvent.paste(typed)
}
/** What stands beside a term. */
const row = (term: string) => {
  const name = screen.queryByText(term)
  return name?.parentElement ? within(name.parentElement).getByRole('definition').textContent : undefined
}

test('120 × 50 × 50 outside is 300 litres in the shop and 259.41 to the waterline, while it is typed', async () => {
  const { unmount } = open()
  expect(screen.queryByLabelText('Length')).toBeNull()
  await choose('Rectangle')
  await choose('Outside, over the glass')
  expect(screen.queryByLabelText('Height of the water')).toBeNull()
  for (const [label, typed] of [
    ['How much water is in it?', '70'],
    ['Length', '120'],
    ['Width, front to back', '50'],
    ['Height of the tank', '50'],
    ['Glass of the sides', '10'],
    ['Glass of the bottom', '12'],
    ['Rock and sand take up', '0'],
  ] as const)
    await type(label, typed)
  expect(row('True volume')).toBe('not known yet')
  await type('Water below the rim', '3')
  expect(row('True volume')).toBe('about 259 litres')
  expect(row('By the measurements')).toBe('259.41 litres')
  expect(row('Outside, with glass and air')).toBe('300 litres')
  expect(row('In US gallons')).toBe('about 68.5')
  expect(row('Buckets of 10 litres')).toBe('about 26')
  expect(row('The number you go by')).toBe('70 US gallons')
  unmount()
}, 30_000)

test('sand and rock make a range, a fill ends it, and all of it is noted', async () => {
  const { unmount } = open()
  // Typed before, and still there.
  expect((await screen.findByLabelText<HTMLInputElement>('Length')).value).toBe('120')
  await choose('Depth of sand and weight of rock')
  expect(screen.queryByLabelText('Rock and sand take up')).toBeNull()
  await type('Depth of the sand', '5')
  await type('Weight of the rock, dry', '30')
  expect(row('True volume')).toBe('about 227 litres')
  expect(row('As sand and rock differ')).toBe('about 220 to 232 litres')
  expect(row('By the measurements')).toBeUndefined()
  await type('A measured fill, if you have one', '59')
  expect(row('As sand and rock differ')).toBeUndefined()
  expect(row('True volume')).toBe('about 223 litres')
  expect(row('By the measurements')).toBe('about 227 litres')
  await userEvent.click(screen.getByRole('button', { name: 'Save' }))
  await screen.findByRole('heading', { level: 1, name: 'Water' })
  expect(currentWorld().tanks.get(longGallery)?.at(-1)?.water).toMatchObject({
    measured: { value: 59, unit: 'usGal' },
    exact: { shape: { form: 'rectangle' }, solids: { by: 'sandAndRock', sandDepth: 5, rockKg: 30 } },
  })
  unmount()
}, 30_000)

test('a bow too deep is refused with the most it can be, and a measure left out beside it', async () => {
  const { unmount } = open()
  await choose('Rectangle with a bow front')
  await type('How far the bow stands out', '61')
  await type('Glass of the sides', ' ')
  await userEvent.click(screen.getByRole('button', { name: 'Save' }))
  expect(screen.getByLabelText('Glass of the sides').getAttribute('aria-invalid')).toBe('true')
  await type('Glass of the sides', '10')
  await userEvent.click(screen.getByRole('button', { name: 'Save' }))
  expect(await screen.findByText(/at most half the length of the front, 60.cm here/)).toBeDefined()
  expect(screen.getByLabelText<HTMLInputElement>('How far the bow stands out').value).toBe('61')
  unmount()
}, 30_000)
