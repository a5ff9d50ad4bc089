/**
 * What was typed in the very last instant. A transaction begun while the page is being left may or may not reach the disk
 * (in Chromium about every other one does), so a copy goes where writing is synchronous, until the transaction is done.
 */
import type { Draft } from '../storage/device.ts'
import { hasLeft, household } from './household.ts'

/** Each household's own. */
const all = (ledger: string) => `${ledger}-draft `
const prefix = (form: string) => `${all(household.ledger)}${JSON.stringify(form)} `

export const leaveWords = (form: string, draft: Draft) => {
  if (hasLeft()) return
  try {
    localStorage.setItem(prefix(form) + draft.tab, JSON.stringify(draft))
  } catch {
    // Full, or forbidden. The transaction may still make it.
  }
}

/** `savedAt`: only if these are still the last ones. */
export const dropWords = (form: string, { tab, savedAt }: Pick<Draft, 'tab'> & Partial<Draft>) => {
  try {
    const key = prefix(form) + tab
    const words = readWords(localStorage.getItem(key))
    if (savedAt === undefined || words === undefined || words.savedAt <= savedAt) localStorage.removeItem(key)
  } catch {
    // Forbidden: then nothing is there.
  }
}

/** What each tab left. */
export const lastWords = (form: string): readonly Draft[] => {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(prefix(form)))
      .flatMap((key) => readWords(localStorage.getItem(key)) ?? [])
  } catch {
    return []
  }
}

export const dropAllWords = (ledger: string) => {
  try {
    for (const key of Object.keys(localStorage)) if (key.startsWith(all(ledger))) localStorage.removeItem(key)
  } catch {
    // Forbidden: then nothing is there.
  }
}

const readWords = (text: string | null): Draft | undefined => (text === null ? undefined : JSON.parse(text))
