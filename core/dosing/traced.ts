/** Which tanks had of a bottle or a bag lately. */
import type { Microlitres } from '../basis/amounts.ts'
import { addDays, type Day } from '../basis/days.ts'
import type { TankId } from '../basis/ids.ts'
import type { FoodThing } from '../food/facts.ts'
import type { AnyFact } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { DoseGiven, DoseGivenOffPlan, DoseSetAside } from './facts.ts'

/** Nights looked back on. Our own judgement. */
export const nightsTraced = 7

export type Traced = {
  readonly entry: Stamp
  readonly tank: TankId
  readonly night: Day
  readonly amount: Microlitres
}
type Dose = DoseGiven | DoseGivenOffPlan | DoseSetAside
const kinds: Record<Dose['kind'], true> = { doseGiven: true, doseGivenOffPlan: true, doseSetAside: true }
const isDose = (fact: AnyFact): fact is Dose => fact.kind in kinds

/** What reached tanks of a thing in the last seven nights, this one included, the latest first. */
export const dosesFrom = (
  { history }: { readonly history: History<AnyFact> },
  thing: FoodThing,
  tonight: Day,
): readonly Traced[] => {
  const since = addDays(tonight, 1 - nightsTraced)
  return history.all
    .flatMap(({ id, fact }): Traced[] => {
      if (!isDose(fact) || history.struck.has(id)) return []
      const from = fact.taken.some((part) =>
        part.from === 'bottle'
          ? 'bottle' in thing && part.bottle === thing.bottle
          : 'lot' in thing && part.lot === thing.lot,
      )
      return from ? fact.served.map(({ tank, night, amount }) => ({ entry: id, tank, night, amount })) : []
    })
    .filter(({ night }) => night >= since && night <= addDays(tonight, 1))
    .sort((a, b) => (a.night < b.night ? 1 : a.night > b.night ? -1 : 0))
}
