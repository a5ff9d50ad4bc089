/** Going into the made-up household, out of it, and clearing away one that was left behind. What does it is loaded when asked. */
import { ok, type Result, refuse } from '../../core/index.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { madeUpAddress, madeUpIsThere } from '../storage/madeUp.ts'
import { lookingRound, markTab, unmarkTab } from './household.ts'
import { whenIdle } from './idle.ts'
import { flushAndReload, loadPart } from './leave.ts'

const part = () => loadPart(() => import('./madeUpBook.ts'))

/** The page is reloaded into it, with the drafts of the real book safe on disk. */
export const lookRound = async (): Promise<Result<void, StorageRefusal>> => {
  const { prepare, letGo } = await part()
  const prepared = await prepare()
  if (!prepared.ok) return prepared
  try {
    markTab()
  } catch (error) {
    await letGo()
    return refuse({ why: 'storageFailed', message: String(error) })
  }
  toTheFront(madeUpAddress)
  await flushAndReload()
  return ok(undefined)
}

/** The real app takes its place. The mark goes first: whatever else is not finished, the next start finishes. */
export const leaveMadeUp = async (): Promise<void> => {
  unmarkTab()
  await part()
    .then(({ clearAway }) => clearAway())
    .catch(reportError)
  toTheFront('')
  window.location.reload()
}

/** What is open in one book may not exist in the other. */
const toTheFront = (search: string) => window.history.replaceState(null, '', `${window.location.pathname}${search}#/`)

/** Called once, after the first screen is up. A tab may have been closed without leaving. */
export const clearLeftBehind = () => {
  if (lookingRound) return
  whenIdle(() => {
    madeUpIsThere()
      .then(async (there) => {
        if (there) await (await part()).sweep()
      })
      // Another day.
      .catch(reportError)
  })
}
