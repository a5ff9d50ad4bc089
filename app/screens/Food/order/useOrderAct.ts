/** One request at a time for the pages about ordering; every field that is wrong has its sentence at once. */
import { type Entry, type Fact, ok, type Result, refuse } from '../../../../core/index.ts'
import type { Ask } from '../../../state/store.ts'
import { fromStorage, useRequest } from '../../../state/useRequest.ts'
import { type OrderFieldRefusal, orderText } from '../../../words/orderRefusals.ts'
import { useReading } from '../../useReading.ts'

type Wrong = { readonly why: 'wrong'; readonly at: Readonly<Record<string, OrderFieldRefusal>> }

/** Field to what is wrong with it; '' is the whole form. */
export const wrong = (at: Wrong['at']) => refuse<Wrong>({ why: 'wrong', at })
/** A core refusal beside the field it concerns. */
export const beside = <Value>(result: Result<Value, OrderFieldRefusal>, field: string): Result<Value, Wrong> =>
  result.ok ? ok(result.value) : wrong({ [field]: result.refusal })

export type OrderAsk = Ask<Wrong>
export type OrderAct = {
  readonly busy: boolean
  readonly send: (ask: OrderAsk) => Promise<readonly Entry<Fact>[] | undefined>
  readonly reset: () => void
  readonly wrong: (field: string) => string | undefined
}

export const useOrderAct = (): OrderAct => {
  const { busy, refusal, send, reset } = useRequest<Wrong>()
  const reading = useReading()
  return {
    busy,
    send,
    reset,
    wrong: (field) => {
      if (!refusal) return undefined
      if (fromStorage(refusal)) return field === '' ? orderText(refusal, reading) : undefined
      const found = refusal.at[field]
      return found && orderText(found, reading)
    },
  }
}
