/** Where a form's drafts are: on the disk, and in each tab's last words. Every tab has a slot of its own. */
import type { Draft } from '../storage/device.ts'
import { dropDraft, keepDraft, letGo, readDrafts } from '../storage/drafts.ts'
import { device } from './device.ts'
import { dropWords, lastWords } from './lastWords.ts'

/** The latest any tab left behind. */
export const latestDraft = async (form: string): Promise<Draft | undefined> => {
  const read = await readDrafts(device, form)
  return [...(read.ok ? read.value : []), ...lastWords(form)].reduce<Draft | undefined>(
    (latest, draft) => (latest === undefined || draft.savedAt > latest.savedAt ? draft : latest),
    undefined,
  )
}

/** False if the disk is full or closed. */
export const keepInSlot = async (form: string, draft: Draft): Promise<boolean> => {
  const kept = await keepDraft(device, form, draft)
  if (kept.ok) dropWords(form, draft)
  return kept.ok
}

export const clearSlot = async (form: string, tab: string): Promise<void> => {
  dropWords(form, { tab })
  await dropDraft(device, form, tab)
}

/** A draft that another has begun as is let go, unless the tab that wrote it has gone on with it. */
export const letGoOf = async (form: string, draft: Draft): Promise<void> => {
  dropWords(form, draft)
  await letGo(device, form, draft)
}
