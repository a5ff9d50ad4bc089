/** A second tank is told apart from the first from the start. With the real storage underneath. */
import 'fake-indexeddb/auto'
import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeAll, expect, test } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { WaterRoutes } from '../../app/screens/Water/rooms.tsx'
import { currentWorld, start, takeIn } from '../../app/state/store.ts'
import { given } from '../support/given.ts'
import { lab, longGallery, tankOf, usGal } from '../support/givenLab.ts'

beforeAll(async () => {
  await start('second-tank-test')
  await takeIn(
    given(
      lab,
      tankOf(longGallery, usGal(190)).map((fact) => ({ ...fact, name: 'Tank' })),
    ).entries(),
  )
})
const names = () => [...currentWorld().tanks.values()].map((described) => described.at(-1)?.name)

test('its name is asked openly and begins with one of its own; the same name is asked about before it stands', async () => {
  const { hook } = memoryLocation({ path: '/water/tank/new' })
  render(
    <Router hook={hook}>
      <WaterRoutes />
    </Router>,
  )
  const name = screen.getByLabelText<HTMLInputElement>('What do you call it?')
  expect(name.value).toBe('Tank 2')
  expect(name.closest('details')).toBeNull()
  await userEvent.clear(name)
  await userEvent.type(name, 'tank')
  await userEvent.type(screen.getByLabelText('How much water is in it?'), '60')
  await userEvent.click(screen.getByRole('radio', { name: 'litres' }))
  await userEvent.click(screen.getByRole('button', { name: 'Save' }))
  await screen.findByText(/There is a tank called tank already/)
  expect(names()).toEqual(['Tank'])
  await userEvent.click(screen.getByRole('button', { name: 'Both go by that name' }))
  await screen.findByRole('heading', { level: 1, name: 'Water' })
  expect(names()).toEqual(['Tank', 'tank'])
}, 30_000)
