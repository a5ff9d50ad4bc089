/**
 * Opens the book the moment this module runs. It is imported ahead of the screens, so that the disk is at work while their
 * modules are still being evaluated.
 */
import { lookingRound } from './state/household.ts'
import { loadPart } from './state/leave.ts'
import { start } from './state/store.ts'

/** How long a blank page may wait for the book before it says that it is being opened. */
const patience = 400

// Usually the book is open before a first frame could be drawn, and drawing one without it would only be in its way. If it
// cannot be opened, that has to be said on a page as well.
const begun = lookingRound
  ? loadPart(() => import('./state/madeUpBook.ts')).then((book) => book.startMadeUp())
  : start()
const waited = new Promise<void>((resolve) => setTimeout(resolve, patience))
export const opened: Promise<void> = Promise.race([begun, waited]).catch(() => {})
