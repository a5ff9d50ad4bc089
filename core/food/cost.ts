/** Money. Unknown is unknown, never zero. */
import type { Day } from '../basis/days.ts'
import type { BottleId, PurchaseId, TankId } from '../basis/ids.ts'
import { stepsWithin } from '../basis/numbers.ts'
import type { Moment } from '../basis/zones.ts'
import { inForce } from '../ledger/snapshot.ts'
import type { Account } from './accounts.ts'
import type { Price, PurchaseRecorded } from './facts.ts'
import { type Bottle, bottleLastGood, type FoodState, foodAt, lotLastGood, usableLiquid } from './state.ts'

/** Minor units, which need not be whole: a dose costs less than the smallest coin. */
export type Cost = { readonly minor: number; readonly currency: string } | 'free' | 'notKnown'

/** Purchases as they stand, the first written down first. */
export const purchasesAt = ({ purchases }: FoodState, now: Moment): readonly PurchaseRecorded[] =>
  [...purchases.values()].flatMap((snapshots) => inForce(snapshots, now) ?? [])
export const purchaseAt = ({ purchases }: FoodState, purchase: PurchaseId, now: Moment): PurchaseRecorded | undefined =>
  inForce(purchases.get(purchase) ?? [], now)

/** The parcel a bottle came in; the one written down last, where two name it. */
export const purchaseOf = (state: FoodState, bottle: BottleId, now: Moment): PurchaseRecorded | undefined => {
  let latest: PurchaseRecorded | undefined
  for (const purchase of purchasesAt(state, now))
    if (purchase.things.some((thing) => thing.bottle === bottle) && (latest === undefined || purchase.at >= latest.at))
      latest = purchase
  return latest
}

const asCost = (price: Price | undefined): Cost => price ?? 'notKnown'

/**
 * What a bottle cost: its share of the parcel it stands in, postage in it, else the price on its own entry. In a parcel that
 * has not been shared it is not known, whatever the bottle's entry says: that may be the price of all of it.
 */
export const bottleCost = (state: FoodState, { id, recorded }: Bottle, now: Moment): Cost => {
  const purchase = purchaseOf(state, id, now)
  if (!purchase) return asCost(recorded.price)
  return asCost(purchase.things.find((thing) => thing.bottle === id)?.share)
}

export type When = { readonly now: Moment; readonly today: Day }
export type Doses = {
  /** That reached a tank; not whole where a dose came from two bottles. */
  readonly given: number
  /** That can still be given: still in time, and not set aside. */
  readonly left: number
}

/**
 * Doses truly given, and those that still can be. Portions dropped, thrown away, given away, or found missing by a count are
 * neither. A portion still in the freezer is taken for one dose, or part of one that needs several: whether it will be shared
 * is not known.
 * @param dose microlitres
 */
export const dosesOf = (state: FoodState, account: Account, dose: number, { now, today }: When): Doses => {
  const food = foodAt(state, account.bottle.recorded.food, now)
  const inTime = (lastGood: Day | undefined): boolean => lastGood === undefined || lastGood >= today
  const given = account.meals.reduce((sum, { doses }) => sum + doses, 0)
  if (!food || dose <= 0) return { given: tidy(given), left: 0 }
  let left = inTime(bottleLastGood(account.bottle, food)) ? stepsWithin(usableLiquid(account.bottle, food), dose) : 0
  const portions = new Map<number, number>()
  for (const { each, standing } of account.lots)
    for (const { lot, count } of standing)
      if (!lot.aside && inTime(lotLastGood(lot, food))) portions.set(each, (portions.get(each) ?? 0) + count)
  for (const [each, count] of portions) left += Math.floor(count / Math.max(1, stepsWithin(dose, each)))
  return { given: tidy(given), left }
}

/** Thirds of a dose add up to one. */
const tidy = (doses: number): number => Math.round(doses * 1e6) / 1e6

/** A bottle begun before it went on record is charged with the part that was in it. */
const chargedShare = ({ bottle: { recorded }, held, whole }: Account): number =>
  recorded.about && whole > 0 ? Math.min(1, held / whole) : 1

/**
 * What one dose from a bottle costs: what was paid over the doses given and those that still can be.
 * @param dose microlitres
 * @param unused microlitres that will not be used in time, taken off what can still be given
 */
export const doseCost = (
  state: FoodState,
  account: Account,
  dose: number,
  { unused = 0, ...when }: When & { readonly unused?: number },
): Cost => {
  const paid = bottleCost(state, account.bottle, when.now)
  if (typeof paid !== 'object') return paid
  const { given, left } = dosesOf(state, account, dose, when)
  const doses = given + Math.max(0, left - (dose > 0 ? stepsWithin(unused, dose) : 0))
  return doses > 0 ? { minor: (paid.minor * chargedShare(account)) / doses, currency: paid.currency } : 'notKnown'
}

/** A year of doses, one every so many nights: 365 / N of them. */
export const yearOfDoses = (dose: Cost, everyNights: number): Cost =>
  typeof dose === 'object' ? { ...dose, minor: (dose.minor * 365) / everyNights } : dose

/** What a night of feeding came to: more than a dose where several tanks were fed. Undefined where no night is known. */
export const nightCost = ({ meals }: Account, dose: Cost): Cost | undefined => {
  const dated = meals.filter(({ counted }) => !counted)
  const nights = new Set(dated.map(({ night }) => night)).size
  if (nights === 0) return undefined
  if (typeof dose !== 'object') return dose
  return { ...dose, minor: (dose.minor * dated.reduce((sum, { doses }) => sum + doses, 0)) / nights }
}

/**
 * Minor units that went to each tank, by what reached it; undefined for doses nobody knows the tank of.
 * @param meals some of the account's: those of a year
 */
export const costByTank = (
  account: Pick<Account, 'meals'>,
  dose: { readonly minor: number },
  meals: Account['meals'] = account.meals,
): ReadonlyMap<TankId | undefined, number> => {
  const doses = account.meals.reduce((sum, each) => sum + each.doses, 0)
  const reached = account.meals.reduce((sum, { amount }) => sum + amount, 0)
  const byTank = new Map<TankId | undefined, number>()
  for (const each of meals) {
    const part = reached > 0 ? each.amount / reached : each.doses / doses
    byTank.set(each.tank, (byTank.get(each.tank) ?? 0) + dose.minor * doses * part)
  }
  return byTank
}
