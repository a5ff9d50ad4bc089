/** A note that is written down is said to be, on the way back to the diary. */
import 'fake-indexeddb/auto'
import { render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeAll, expect, test } from 'vitest'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { DiaryRoutes } from '../../app/screens/Diary/rooms.tsx'
import { currentWorld, start } from '../../app/state/store.ts'

beforeAll(() => start('note-said-test'))

test('what is written is acknowledged with its day', async () => {
  const { hook } = memoryLocation({ path: '/diary/note' })
  render(
    <Router hook={hook}>
      <DiaryRoutes />
    </Router>,
  )
  await userEvent.type(screen.getByLabelText('What happened, or what did you see?'), 'eggs')
  await userEvent.click(screen.getByRole('button', { name: 'Write it down' }))
  await screen.findByText('Your note stands under today.', {}, { timeout: 10_000 })
  expect(currentWorld().history.all.at(-1)?.fact).toMatchObject({ kind: 'noteWritten' })
}, 30_000)
