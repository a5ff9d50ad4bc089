/** A year of one household: what was given, what was not, what went to waste, and what it all cost. */
import { byText } from '../basis/compare.ts'
import { type Day, daysBetween, earlier, later } from '../basis/days.ts'
import type { Here } from '../basis/here.ts'
import { today } from '../basis/here.ts'
import type { FoodId, PlanId, TankId } from '../basis/ids.ts'
import { type Moment, wallDay } from '../basis/zones.ts'
import { openNights } from '../dosing/openNights.ts'
import { doseToFreeze } from '../dosing/portion.ts'
import { givenOf, planAt, plansAt } from '../dosing/state.ts'
import type { Account } from '../food/accounts.ts'
import { bottleCost, costByTank, doseCost, purchaseOf, purchasesAt } from '../food/cost.ts'
import type { Fate, Price } from '../food/facts.ts'
import { paidInAll, sumPrices } from '../food/purchase.ts'
import type { Bottle } from '../food/state.ts'
import type { Fact } from './facts.ts'
import type { World } from './world.ts'

/** Minor units by currency: two of them are never added. */
export type Purse = ReadonlyMap<string, number>
export type Waste = {
  /** Missing: a count or a measure found less than the book, less what was found again. */
  readonly fate: Fate | 'givenAway' | 'missing'
  readonly why: string | undefined
  readonly portions: number
  /** Microlitres of liquid. */
  readonly liquid: number
}
export type Given = {
  readonly doses: number
  /** Microlitres. */
  readonly amount: number
  readonly nights: number
}
export type TankYear = Given & {
  readonly tank: TankId | undefined
  /** What was paid for the food that reached it. */
  readonly cost: Purse
  /** Of its doses, those from food whose price is not known. */
  readonly unpriced: number
}
export type FoodYear = Given & {
  readonly food: FoodId
  readonly bottles: number
  readonly spent: Purse
  /** Bottles that came in this year, and whose price is not known. */
  readonly unpriced: number
}
export type Year = {
  readonly given: Given
  /** Doses a count settled: how many, not on which nights. */
  readonly counted: number
  /** Chosen not to; said of a stretch that nothing was given, reckoned by the plan; nobody remembers; not written down. */
  readonly skipped: number
  readonly missed: number
  readonly unknown: number
  readonly open: number
  readonly waste: readonly Waste[]
  readonly spent: Purse
  /** What was spent on other things in the same parcels. */
  readonly onOther: Purse
  /** Bottles, and parcels, whose price is not known. */
  readonly unpricedBottles: number
  readonly unpricedParcels: number
  readonly tanks: readonly TankYear[]
  readonly foods: readonly FoodYear[]
}

const yearOf = (day: Day): number => Number(day.slice(0, 4))

/** The years something happened in, the newest first; this one always. */
export const yearsTold = ({ history: { all, struck } }: World, here: Here): readonly number[] => {
  const years = new Set([yearOf(today(here))])
  for (const { id, fact } of all) if (!struck.has(id)) for (const day of daysOf(fact, here)) years.add(yearOf(day))
  return [...years].filter((year) => year <= yearOf(today(here))).sort((a, b) => b - a)
}
const daysOf = (fact: Fact, { zone }: Here): readonly Day[] => {
  switch (fact.kind) {
    case 'doseGiven':
    case 'doseGivenOffPlan':
      return fact.served.map(({ night }) => night)
    case 'portionsGone':
    case 'liquidGone':
    case 'portionsGivenAway':
    case 'nightSkipped':
    case 'nightsMissed':
    case 'nightsCounted':
    case 'purchaseRecorded':
    case 'bottleRecorded':
      return [wallDay(fact.at, zone)]
  }
  return []
}

type Sum = { doses: number; amount: number; nights: Set<string> }
const emptySum = (): Sum => ({ doses: 0, amount: 0, nights: new Set() })
const told = ({ doses, amount, nights }: Sum): Given => ({ doses, amount, nights: nights.size })
const sumIn = <Key>(sums: Map<Key, Sum>, key: Key): Sum => {
  const known = sums.get(key) ?? emptySum()
  sums.set(key, known)
  return known
}
const add = (purse: Map<string, number>, currency: string, minor: number) =>
  purse.set(currency, (purse.get(currency) ?? 0) + minor)

export const yearSums = (world: World, accounts: Iterable<Account>, year: number, here: Here): Year => {
  const all = [...accounts]
  const inYear = (day: Day): boolean => yearOf(day) === year
  const at = (moment: Moment): boolean => inYear(wallDay(moment, here.zone))
  const { whole, tanks, foods, counted } = givenIn(world, inYear)
  const costs = tankCosts(world, all, inYear, here)
  const spending = spentIn(world, inYear, here)
  const tankIds = new Set<TankId | undefined>([...tanks.keys(), ...costs.keys()])
  const foodIds = new Set<FoodId>([...foods.keys(), ...spending.foods.keys()])
  return {
    given: told(whole),
    counted,
    ...notGiven(world, year, inYear, here),
    waste: wasteIn(world, at),
    ...spending.whole,
    tanks: [...tankIds].map((tank) => ({
      tank,
      ...told(tanks.get(tank) ?? emptySum()),
      cost: costs.get(tank)?.purse ?? new Map(),
      unpriced: Math.max(0, Math.round((tanks.get(tank)?.doses ?? 0) - (costs.get(tank)?.priced ?? 0))),
    })),
    foods: [...foodIds].map((food) => ({
      food,
      ...told(foods.get(food) ?? emptySum()),
      ...(spending.foods.get(food) ?? { bottles: 0, spent: new Map(), unpriced: 0 }),
    })),
  }
}

const givenIn = ({ history: { all, struck } }: World, inYear: (night: Day) => boolean) => {
  const whole = emptySum()
  const tanks = new Map<TankId | undefined, Sum>()
  const foods = new Map<FoodId, Sum>()
  let counted = 0
  const give = (tank: TankId | undefined, food: FoodId, night: Day | undefined, doses: number, amount: number) => {
    for (const sum of [whole, sumIn(tanks, tank), sumIn(foods, food)]) {
      sum.doses += doses
      sum.amount += amount
      if (night) sum.nights.add(night)
    }
  }
  for (const { id, fact } of all) {
    if (struck.has(id)) continue
    if (fact.kind === 'doseGiven' || fact.kind === 'doseGivenOffPlan') {
      for (const { tank, night, amount } of fact.served)
        if (amount > 0 && inYear(night)) give(tank, fact.food, night, 1, amount)
    } else if (fact.kind === 'nightsCounted') {
      const night = fact.rounds
        .map(({ to }) => to)
        .sort(byText)
        .at(-1)
      if (!night || !inYear(night) || fact.doses === 0) continue
      const of = new Set(fact.rounds.map(({ tank }) => tank))
      give(of.size === 1 ? fact.rounds[0]?.tank : undefined, fact.food, undefined, fact.doses, fact.amount)
      counted += fact.doses
    }
  }
  return { whole, tanks, foods, counted }
}

const notGiven = (world: World, year: number, inYear: (night: Day) => boolean, { now }: Here) => {
  let skipped = 0
  let unknown = 0
  let missed = 0
  for (const nights of world.nights.values())
    for (const [night, marks] of nights) {
      if (!inYear(night) || givenOf(marks).length > 0) continue
      if (marks.some(({ what }) => what === 'skipped')) skipped += 1
      else if (marks.some(({ what }) => what === 'unknown')) unknown += 1
    }
  for (const [plan, ranges] of world.missed)
    for (const range of ranges) missed += nightsIn(world, plan, range, year, now)
  const open = plansAt(world, now)
    .flatMap((plan) => openNights(world, plan, now))
    .filter(inYear).length
  return { skipped, unknown, missed, open }
}
/** Dose nights of a stretch, by the plan's rhythm as it stands: the first night of it was one. */
const nightsIn = (world: World, id: PlanId, range: { from: Day; to: Day }, year: number, now: Moment): number => {
  const from = later(range.from, `${year}-01-01` as Day)
  const to = earlier(range.to, `${year}-12-31` as Day)
  const every = planAt(world, id, now)?.everyNights ?? 1
  return to < from ? 0 : Math.floor(daysBetween(from, to) / every) + 1
}

/** By what happened to it and why, the most first. */
const wasteIn = (world: World, inYear: (at: Moment) => boolean): readonly Waste[] => {
  const { all, struck } = world.history
  const waste = new Map<string, { -readonly [Key in keyof Waste]: Waste[Key] }>()
  const lay = (fate: Waste['fate'], why: string | undefined, portions: number, liquid: number) => {
    const key = `${fate} ${why ?? ''}`
    const known = waste.get(key) ?? { fate, why, portions: 0, liquid: 0 }
    waste.set(key, { ...known, portions: known.portions + portions, liquid: known.liquid + liquid })
  }
  for (const { id, fact } of all) {
    if (struck.has(id) || !inYear(fact.at)) continue
    if (fact.kind === 'portionsGone') lay(fact.fate, fact.why, fact.count, 0)
    else if (fact.kind === 'liquidGone') lay(fact.fate, fact.why, 0, fact.amount)
    else if (fact.kind === 'portionsGivenAway') lay('givenAway', undefined, fact.count, 0)
    else if (fact.kind === 'portionsFound') lay('missing', undefined, -fact.count, 0)
  }
  // What a count found beyond doses it settled: those were given.
  const settled = new Set(all.flatMap(({ id, fact }) => (fact.kind === 'nightsCounted' ? [id] : [])))
  for (const { observations } of world.lots.values())
    for (const { entry, at, bookThen, bookNow, found } of observations)
      if (inYear(at))
        lay('missing', undefined, bookNow - found - (settled.has(entry) ? Math.max(0, bookThen - found) : 0), 0)
  for (const { observations } of world.bottles.values())
    for (const { at, bookNow, found } of observations) if (inYear(at)) lay('missing', undefined, 0, bookNow - found)
  return [...waste.values()]
    .filter(({ portions, liquid }) => portions !== 0 || liquid !== 0)
    .sort((a, b) => b.portions - a.portions || b.liquid - a.liquid)
}

/** What was paid for the food that reached a tank since a night, and how many of those doses have no price. */
export const foodCostSince = (
  world: World,
  accounts: Iterable<Account>,
  tank: TankId,
  since: Day,
  here: Here,
): Pick<TankYear, 'doses' | 'cost' | 'unpriced'> => {
  const all = [...accounts]
  const from = (night: Day): boolean => night >= since
  const { doses } = givenIn(world, from).tanks.get(tank) ?? emptySum()
  const cost = tankCosts(world, all, from, here).get(tank)
  return { doses, cost: cost?.purse ?? new Map(), unpriced: Math.max(0, Math.round(doses - (cost?.priced ?? 0))) }
}

type TankCost = { readonly purse: Map<string, number>; priced: number }
/** What was paid for the food that reached each tank, laid to its nights by the amount. */
const tankCosts = (world: World, accounts: readonly Account[], inYear: (night: Day) => boolean, here: Here) => {
  const tanks = new Map<TankId | undefined, TankCost>()
  const of = (tank: TankId | undefined): TankCost => {
    const known = tanks.get(tank) ?? { purse: new Map(), priced: 0 }
    tanks.set(tank, known)
    return known
  }
  for (const account of accounts) {
    const { dose } = doseToFreeze(world, account.bottle.recorded.food, here.now)
    const cost = doseCost(world, account, dose, { now: here.now, today: today(here) })
    if (cost === 'notKnown') continue
    const meals = account.meals.filter(({ night }) => inYear(night))
    for (const { tank, doses } of meals) of(tank).priced += doses
    if (cost === 'free') continue
    for (const [tank, minor] of costByTank(account, cost, meals)) add(of(tank).purse, cost.currency, minor)
  }
  return tanks
}

type FoodSpent = { bottles: number; spent: Map<string, number>; unpriced: number }
/** Parcels by the day they were bought, other bottles by the day they came. */
const spentIn = (world: World, inYear: (day: Day) => boolean, here: Here) => {
  const spent = new Map<string, number>()
  const onOther = new Map<string, number>()
  const foods = new Map<FoodId, FoodSpent>()
  let unpricedBottles = 0
  let unpricedParcels = 0
  const pay = (purse: Map<string, number>, price: Price | undefined) => {
    if (typeof price === 'object') add(purse, price.currency, price.minor)
  }
  for (const purchase of purchasesAt(world, here.now)) {
    if (!inYear(purchase.on ?? wallDay(purchase.at, here.zone))) continue
    const whole = paidInAll(purchase)
    const shares = sumPrices(purchase.things.map(({ share }) => share))
    if (whole.ok && whole.value !== undefined) pay(spent, whole.value)
    else if (whole.ok) {
      unpricedParcels += 1
      if (shares.ok) pay(spent, shares.value)
    } else for (const price of [purchase.paid, purchase.postage]) pay(spent, price)
    for (const { bottle, share } of purchase.things) if (bottle === undefined) pay(onOther, share)
  }
  for (const bottle of world.bottles.values()) {
    const parcel = purchaseOf(world, bottle.id, here.now)
    const day = parcel ? (parcel.on ?? wallDay(parcel.at, here.zone)) : cameOn(bottle, here)
    if (!inYear(day)) continue
    const food = foods.get(bottle.recorded.food) ?? { bottles: 0, spent: new Map(), unpriced: 0 }
    foods.set(bottle.recorded.food, food)
    food.bottles += 1
    const cost = bottleCost(world, bottle, here.now)
    if (cost === 'notKnown') {
      food.unpriced += 1
      if (!parcel) unpricedBottles += 1
    } else {
      pay(food.spent, cost)
      if (!parcel) pay(spent, cost)
    }
  }
  return { whole: { spent, onOther, unpricedBottles, unpricedParcels }, foods }
}
const cameOn = ({ recorded, openedOn }: Bottle, { zone }: Here): Day =>
  recorded.receivedOn ?? openedOn ?? wallDay(recorded.at, zone)
