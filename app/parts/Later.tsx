/** What hangs under the answer is drawn once the answer and the act stand: the first touch must not wait for it. */
import { type ReactNode, useDeferredValue } from 'react'

export const Later = ({ children }: { readonly children: ReactNode }) => useDeferredValue(true, false) && children
