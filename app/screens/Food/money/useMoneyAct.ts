/** A form that says everything that is wrong with it at once, each beside its field. */
import type { Entry, Fact } from '../../../../core/index.ts'
import type { Ask } from '../../../state/store.ts'
import { useRequest } from '../../../state/useRequest.ts'
import { moneyText } from '../../../words/parcel.ts'
import { useReading } from '../../useReading.ts'
import type { MoneyTrouble } from './readPurchase.ts'

export type MoneyAct = {
  readonly busy: boolean
  readonly send: (ask: Ask<readonly MoneyTrouble[]>) => Promise<readonly Entry<Fact>[] | undefined>
  readonly reset: () => void
  readonly wrong: (field: string) => string | undefined
}

export const useMoneyAct = (): MoneyAct => {
  const { busy, refusal, send, reset } = useRequest<readonly MoneyTrouble[]>()
  const reading = useReading()
  const troubles: readonly MoneyTrouble[] =
    refusal === undefined ? [] : 'why' in refusal ? [{ at: '', refusal }] : refusal
  return {
    busy,
    send,
    reset,
    wrong: (field) => {
      const found = troubles.find(({ at }) => at === field)
      return found && moneyText(found.refusal, reading)
    },
  }
}
