/** Asks the browser, once, not to clear what it keeps for us, as soon as there is food on record worth keeping. */
import type { Entry, Fact } from '../../core/index.ts'
import type { Persistence } from '../storage/device.ts'
import { matter, setMatter, useMatter } from './device.ts'
import { lookingRound } from './household.ts'

export const afterRecording = (added: readonly Entry<Fact>[]) => {
  if (lookingRound) return
  const food = added.some(({ fact }) => fact.kind === 'bottleRecorded' || fact.kind === 'portionsOnHand')
  if (food && matter('persistence') === undefined) void askToPersist()
}

/** Also behind a button: an answer may change when the app is put on the home screen. */
export const askToPersist = async (): Promise<Persistence> => {
  const answer = await persist()
  await setMatter('persistence', answer)
  return answer
}

/** Undefined: not asked yet. */
export const usePersistence = (): Persistence | undefined => useMatter('persistence')

const persist = async (): Promise<Persistence> => {
  // Absent outside a secure context and in old browsers, whatever the types say.
  const storage: StorageManager | undefined = navigator.storage
  if (typeof storage?.persist !== 'function') return 'cannotTell'
  try {
    return (await storage.persist()) ? 'kept' : 'mayBeCleared'
  } catch {
    return 'cannotTell'
  }
}
