/** The plan of a night and the night itself, typed and ticked, with the real storage underneath. */
import 'fake-indexeddb/auto'
import { cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { SeedingRoutes } from '../../app/screens/Seeding/rooms.tsx'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { entryText } from '../../app/words/entries.ts'
import { day, planSeeding, type RunId, runNow, tickStep } from '../../core/index.ts'
import { at, given, london } from '../support/given.ts'
import { lab, longGallery, mL } from '../support/givenLab.ts'
import { equipmentOf } from '../support/givenSeeding.ts'

const run = 'run1' as RunId
const tuesday = '2027-06-15'
const on = (clock: string) => at(`${tuesday} ${clock}`)
const book = given(lab, equipmentOf(['topOff', 'skimmer', 'return']))
const plan = (id: RunId) =>
  book.does((world) =>
    planSeeding(
      world,
      {
        run: id,
        tank: longGallery,
        animals: ['copepods'],
        pours: [
          { into: 'display', bottles: 2 },
          { into: 'refugium', bottles: 0.5 },
        ],
        holds: mL(473),
        waterOut: 'half',
        rinse: { each: mL(80), of: 'tankWater' },
        off: on('21:40'),
        morning: at('2027-06-16 08:15'),
      },
      on('18:00'),
    ),
  )

beforeAll(async () => {
  await start('night-test')
})
/** All the book has so far is taken in, and a page of it opened. */
const open = async (path: string, clock = '19:00') => {
  vi.setSystemTime(on(clock))
  await takeIn(book.entries())
  const { hook, history } = memoryLocation({ path, record: true })
  render(
    <Router hook={hook}>
      <SeedingRoutes />
    </Router>,
  )
  return history
}
const field = (label: string) => screen.findByLabelText<HTMLInputElement>(label)
const value = async (label: string) => (await field(label)).value
const type = async (label: string, text: string) => {
  await userEvent.clear(await field(label))
  if (text) await userEvent.type(await field(label), text)
}
const touch = async (name: string | RegExp) => userEvent.click(await screen.findByRole('button', { name }))
const planInForce = (clock: string) => {
  const known = currentWorld().runs.get(run)
  const stands = known && runNow(known, on(clock))
  if (!stands) throw new Error('no run')
  return stands
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: on('19:00') })
})
afterEach(() => {
  cleanup()
  vi.useRealTimers()
})

test('a plan is changed on a form filled from it: what is not touched stays, and so do the ticks', async () => {
  plan(run)
  book.does((world) => tickStep(world, { run, step: 'topOff-off' }, on('18:55')))
  const history = await open(`/seeding/${longGallery}/plan/run/${run}`)
  expect(await value('When do the pumps go off?')).toBe('21:40')
  expect(await value('When is everything else switched on in the morning?')).toBe('08:15')
  expect(await value('Bottles into the display')).toBe('2')
  expect(await value('Bottles into the refugium')).toBe('0.5')
  expect(await value('What does one bottle hold?')).toBe('473')
  expect(await value('How much for each bottle?')).toBe('80')
  await type('When do the pumps go off?', '20:30')
  await touch('Change it so')
  await screen.findByText(/^The display is lit until 21:00/)
  await type('When do the pumps go off?', '22:30')
  await type('Bottles into the refugium', '')
  expect(screen.queryByText(/^The salt/)).toBeNull()
  await type('Salt of the tank', '35')
  expect(screen.queryByText(/^The salt/)).toBeNull()
  await type('Salt of the water in the bottles', '1.02')
  await touch('Change it so')
  await screen.findByText(/specific gravity/)
  await type('Salt of the water in the bottles', '20')
  // 200 US gallons are 757.08 L: 35 − 0.946 × 15 / 757.08 = 34.98.
  await screen.findByText(/^The salt goes from 35 to 34.98/)
  await touch('Change it so')
  await vi.waitFor(() => expect(currentWorld().runs.get(run)?.planned).toHaveLength(2))
  await vi.waitFor(() => expect(history?.at(-1)).toBe(`/seeding/run/${run}`))
  expect(currentWorld().runs.size).toBe(1)
  const { plan: changed, steps } = planInForce('19:00')
  expect(changed).toMatchObject({
    off: on('22:30'),
    morning: at('2027-06-16 08:15'),
    pours: [{ into: 'display', bottles: 2 }],
    waterOut: 'half',
    rinse: { each: mL(80), of: 'tankWater' },
    tankSalt: 35,
    bottleSalt: 20,
  })
  expect(steps[0]).toMatchObject({ step: 'topOff-off', at: on('22:00'), done: on('18:55') })
  const said = entryText(changed, currentWorld(), on('19:01'), { today: day(tuesday), zone: london })
  expect(said).toMatch(/^Plan changed for longgallery/)
}, 60_000)

test('the way to the change is there until a pump is off; then the plan stands', async () => {
  const other = 'run2' as RunId
  plan(other)
  await open(`/seeding/run/${other}`)
  const link = await screen.findByRole('link', { name: 'Change the plan' })
  expect(link.getAttribute('href')).toBe(`#/seeding/${longGallery}/plan/run/${other}`)
  cleanup()
  book.does((world) => tickStep(world, { run: other, step: 'return-off' }, on('21:40')))
  await open(`/seeding/run/${other}`, '21:41')
  await screen.findByRole('link', { name: /^Live bottles for/ })
  expect(screen.queryByRole('link', { name: 'Change the plan' })).toBeNull()
  cleanup()
  await open(`/seeding/${longGallery}/plan/run/${other}`, '21:41')
  await screen.findByText(/the plan stands as it is/)
  expect(screen.queryByRole('button', { name: 'Change it so' })).toBeNull()
}, 60_000)

test('one more of a sort has a name and stops by itself; the steps call it so, and taken away it is gone', async () => {
  const history = await open(`/seeding/${longGallery}/equipment`, '21:45')
  await touch('One more: Return pump')
  await type('Name of return pump 2', 'over the overflow')
  await touch('One more: Return pump')
  await touch(/^Return pump.3$/)
  await touch('Save')
  await vi.waitFor(() => expect(history?.at(-1)).toBe(`/seeding/${longGallery}`))
  const devices = () => currentWorld().equipment.get(longGallery)?.at(-1)?.devices ?? []
  expect(devices().filter(({ device }) => device === 'return')).toEqual([
    { key: 'return', device: 'return', stops: true },
    { key: 'return-2', device: 'return', name: 'over the overflow', stops: true },
    { key: 'return-3', device: 'return', stops: false },
  ])
  cleanup()
  await open(`/seeding/${longGallery}/plan`, '21:46')
  await type('What does one bottle hold?', '473')
  await screen.findByText('Return pump “over the overflow” off')
  expect(screen.getByText(/^Return pump.1 on$/)).toBeDefined()
  expect(screen.queryByText(/^Return pump.3 off$/)).toBeNull()
  cleanup()
  const again = await open(`/seeding/${longGallery}/equipment`, '21:45')
  await touch(/^Take it away: return pump.1$/)
  await touch(/^Take it away: return pump.3$/)
  await touch('One more: Return pump')
  await touch('Save')
  await vi.waitFor(() => expect(again?.at(-1)).toBe(`/seeding/${longGallery}`))
  // Its key is its own, and a new one is new.
  expect(devices().filter(({ device }) => device === 'return')).toEqual([
    { key: 'return-2', device: 'return', name: 'over the overflow', stops: true },
    { key: 'return-4', device: 'return', stops: true },
  ])
}, 60_000)
