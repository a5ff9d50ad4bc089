/** A form's fields, restored when it opens again. */
import { useState, useSyncExternalStore } from 'react'
import { type DraftState, type OpenDraft, openDraft } from './drafts.ts'

export type UsedDraft<Fields> = DraftState<Fields> & Pick<OpenDraft<Fields>, 'change' | 'clear' | 'flush'>

/**
 * `form` names the form, and what it is about if there may be several: "bottle", "plan/3kf9". A component that may change
 * its form in place needs a `key`. Every field needs a first value, if only `undefined`.
 */
export const useDraft = <Fields extends object>(form: string, initial: Fields): UsedDraft<Fields> => {
  const [draft] = useState(() => openDraft(form, initial))
  const state = useSyncExternalStore(draft.subscribe, draft.state)
  const { change, clear, flush } = draft
  return { ...state, change, clear, flush }
}
