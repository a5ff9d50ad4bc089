/** Drafts that were left on the disk and in last words. */
import 'fake-indexeddb/auto'
import { expect, test } from 'vitest'
import { device } from '../../app/state/device.ts'
import { latestDraft } from '../../app/state/draftSlots.ts'
import { openDraft } from '../../app/state/drafts.ts'
import { leaveWords } from '../../app/state/lastWords.ts'
import { keepDraft } from '../../app/storage/drafts.ts'
import { moment } from '../../core/index.ts'

const left = (savedAt: number, text: string) => ({ fields: { text }, savedAt: moment(savedAt), tab: 'gone' })

test('what a tab had on disk before its last words does not come back once the form is saved', async () => {
  await keepDraft(device, 'note', left(1_700_000_000_000, 'nine port'))
  leaveWords('note', left(1_700_000_000_200, 'nine portions'))
  const draft = openDraft('note', { text: '' })
  const leave = draft.subscribe(() => {})
  await expect.poll(() => draft.state().fields.text).toBe('nine portions')
  await draft.clear()
  leave()
  expect(await latestDraft('note')).toBeUndefined()
})

test('what a tab went on with after another began as it had been stays', async () => {
  const draft = openDraft('count', { text: '' })
  const leave = draft.subscribe(() => {})
  await expect.poll(() => draft.state().ready).toBe(true)
  leave()
  await keepDraft(device, 'count', left(1_700_000_000_000, 'five'))
  const second = openDraft('count', { text: '' })
  const leaveSecond = second.subscribe(() => {})
  await expect.poll(() => second.state().fields.text).toBe('five')
  await keepDraft(device, 'count', left(1_700_000_000_900, 'five or six'))
  await second.clear()
  leaveSecond()
  expect((await latestDraft('count'))?.fields).toEqual({ text: 'five or six' })
})
