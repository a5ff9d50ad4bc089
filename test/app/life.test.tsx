/** A jar through a sieve is typed, refused in words beside every wrong field, and kept as it was counted. */
import 'fake-indexeddb/auto'
import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeAll, expect, test } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { LifeRoutes } from '../../app/screens/Life/rooms.tsx'
import { currentWorld, request, start } from '../../app/state/store.ts'
import { describeTank, fromMillilitres, ok } from '../../core/index.ts'
import { done, london } from '../support/given.ts'
import { longGallery } from '../support/givenLab.ts'

beforeAll(async () => {
  await start('life-test')
  await request((_world, { now }) =>
    ok(
      done(
        describeTank(
          {
            tank: longGallery,
            name: 'Long Gallery',
            water: { stated: { value: 400, unit: 'L' }, about: false, doseBy: 'stated' },
            zone: london,
            lightsOut: '21:00',
            pipetteMark: fromMillilitres(0.05),
          },
          now,
        ),
      ),
    ),
  )
})

const field = (label: string) => screen.getByLabelText(label)
const type = async (label: string, text: string) => {
  await userEvent.clear(field(label))
  await userEvent.type(field(label), text)
}

test('a jar is counted look by look', async () => {
  const { hook } = memoryLocation({ path: `/water/${longGallery}/life/jar` })
  render(
    <Router hook={hook}>
      <LifeRoutes tank={longGallery} />
    </Router>,
  )
  await type('Look 1', '4.5')
  await userEvent.click(screen.getByRole('button', { name: 'Keep this count' }))
  // Both at once, and nothing typed is lost.
  await screen.findByText('A whole number: half an animal cannot be counted.')
  expect(screen.getByText('Nothing is entered here yet.')).toBeDefined()
  expect(field('Look 1')).toHaveProperty('value', '4.5')
  expect(currentWorld().watched.get(longGallery)).toBeUndefined()
  await type('How much tank water went through the sieve?', '2')
  await type('Look 1', '4')
  await type('Look 2', '6')
  await type('Look 3', '5')
  expect(screen.getByText('At least about 125 per litre, between 70 and 206.')).toBeDefined()
  await type('The share of animals it keeps, if you know it', '120')
  await userEvent.click(screen.getByRole('button', { name: 'Keep this count' }))
  await screen.findByText('The share the sieve keeps, in per cent: above 0, and 100 at most.')
  await type('The share of animals it keeps, if you know it', '80')
  expect(screen.getByText('About 156 per litre, between 87 and 258.')).toBeDefined()
  await type('Where was the jar filled?', 'sump')
  await userEvent.click(screen.getByRole('button', { name: 'Keep this count' }))
  await screen.findByText('The count is kept.', {}, { timeout: 10_000 })
  expect(currentWorld().watched.get(longGallery)?.counted[0]?.fact).toMatchObject({
    looked: { how: 'jar', litres: 2, rinsedInto: 50, lookedAt: 1, kept: 0.8 },
    counts: [4, 6, 5],
    where: 'sump',
  })
  await userEvent.click(screen.getByRole('button', { name: 'Undo' }))
  await screen.findByText('Nothing is written down of the small life yet.', {}, { timeout: 10_000 })
  expect(screen.getByRole('link', { name: 'Plan a pour' }).getAttribute('href')).toBe(`#/seeding/${longGallery}/plan`)
}, 60_000)
