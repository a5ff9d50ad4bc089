/** One request at a time, and what is wrong with it beside each field. */
import type { Entry, Fact } from '../../../core/index.ts'
import type { Ask } from '../../state/store.ts'
import { fromStorage, useRequest } from '../../state/useRequest.ts'
import { lifeRefusalText } from '../../words/life.ts'
import { refusalText } from '../../words/refusals.ts'
import { useReading } from '../useReading.ts'
import type { LifeTrouble } from './lifeFields.ts'

export type LifeForm = {
  readonly busy: boolean
  readonly send: (ask: Ask<LifeTrouble>) => Promise<readonly Entry<Fact>[] | undefined>
  readonly reset: () => void
  /** The sentence for a field; '' is the form as a whole. */
  readonly wrong: (field: string) => string | undefined
}

export const useLifeForm = (): LifeForm => {
  const { busy, refusal, send, reset } = useRequest<LifeTrouble>()
  const reading = useReading()
  const wrong = (field: string): string | undefined => {
    if (!refusal) return undefined
    if (fromStorage(refusal)) return field === '' ? refusalText(refusal, reading) : undefined
    const found = refusal.at[field]
    return found && lifeRefusalText(found, reading)
  }
  return { busy, send, reset, wrong }
}
