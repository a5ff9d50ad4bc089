/** What every form of the food room shares: one request at a time, and its refusal beside the field it concerns. */
import type { Moment, Result, World } from '../../../core/index.ts'
import { type Entry, type Fact, ok, refuse } from '../../../core/index.ts'
import { useRequest } from '../../state/useRequest.ts'
import { type FieldRefusal, fieldText } from '../../words/foodRefusals.ts'
import { useReading } from '../useReading.ts'

/** `at` names the field; empty where it concerns the whole form. */
export type Trouble = { readonly at: string; readonly refusal: FieldRefusal }
export type FormAsk = (world: World, context: { readonly now: Moment }) => Result<readonly Fact[], Trouble>

export const trouble = (at: string, refusal: FieldRefusal) => refuse<Trouble>({ at, refusal })

/** A core refusal, put beside the field that `fields` names for it. */
export const placed = <Value>(
  result: Result<Value, FieldRefusal>,
  at: string | Partial<Record<FieldRefusal['why'], string>>,
): Result<Value, Trouble> => {
  if (result.ok) return ok(result.value)
  return trouble(typeof at === 'string' ? at : (at[result.refusal.why] ?? ''), result.refusal)
}

export type Act = {
  readonly busy: boolean
  /** Answers what is on disk now; undefined where it was refused. */
  readonly send: (ask: FormAsk) => Promise<readonly Entry<Fact>[] | undefined>
  readonly reset: () => void
  readonly refusal: FieldRefusal | undefined
  /** The sentence for a field, if it is the one at fault. */
  readonly wrong: (field: string) => string | undefined
}

export const useAct = (): Act => {
  const { busy, refusal, send, reset } = useRequest<Trouble>()
  const reading = useReading()
  const found: Trouble | undefined = refusal && ('refusal' in refusal ? refusal : { at: '', refusal })
  return {
    busy,
    reset,
    send,
    refusal: found?.refusal,
    wrong: (field) => (found && found.at === field ? fieldText(found.refusal, reading) : undefined),
  }
}
