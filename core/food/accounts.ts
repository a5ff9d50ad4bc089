/**
 * What became of each bottle's food, portion by portion: the ledger walked once more, in the same order as the fold, telling
 * portions apart by the freezing they came from. The fold keeps what there is; this keeps what it was for.
 *
 * In a bag that holds two freezings the older portions are taken first, as she would. Our own judgement.
 */
import { bottleAmount, type Microlitres } from '../basis/amounts.ts'
import { byText } from '../basis/compare.ts'
import type { Day } from '../basis/days.ts'
import type { BottleId, LotId, TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { DoseGiven, DoseGivenOffPlan, DosingFact, NightsCounted, Taken } from '../dosing/facts.ts'
import type { AnyFact } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import type { Stamp } from '../ledger/stamp.ts'
import { emptyBags, type Ways } from './bags.ts'
import type { Fate, FoodFact, PortionsFrozen } from './facts.ts'
import type { Bottle, FoodState, Lot } from './state.ts'

export type FoodTold = FoodState & { readonly history: History<AnyFact> }

/** Food of one bottle in one tank on one night. */
export type Meal = {
  /** Undefined where a count says that so much was used, in one of several tanks. */
  readonly tank: TankId | undefined
  readonly night: Day
  readonly at: Moment
  /** One, or a part of one where the dose came from two bottles; more where nights were settled by a count. */
  readonly doses: number
  /** Microlitres that reached the tank, not always whole. */
  readonly amount: number
  readonly from: 'fresh' | 'frozen'
  /** Its freezing day, if it was frozen. */
  readonly frozenOn: Day | undefined
  /** The nights behind a count are not invented: only how many doses there were is known. */
  readonly counted: boolean
}
/** Portions or liquid that reached no tank, in one go. */
export type Loss = {
  readonly at: Moment
  /** Microlitres. */
  readonly amount: number
  /** Undefined for liquid. */
  readonly portions: number | undefined
  readonly fate: Fate
  readonly why: string | undefined
}

/** One freezing of a bottle, wherever its portions went. Counts of portions, which sum to `made`. */
export type LotAccount = Ways & {
  readonly lot: LotId
  readonly each: Microlitres
  readonly frozenOn: Day
  readonly made: number
  /** Where portions of it stand now, and how many; below zero where more were taken than the book knew of. */
  readonly standing: readonly { readonly lot: Lot; readonly count: number }[]
}

/** All in microlitres but the portions of its lots. */
export type Account = {
  readonly bottle: Bottle
  /** What a full one holds by its label. */
  readonly whole: number
  /** What was in it when it went on record, and what the book knows to have left it before. */
  readonly held: number
  readonly lots: readonly LotAccount[]
  /** Freezings beyond what their portions hold: drips. Below zero where the portions came to more than left the bottle. */
  readonly drips: number
  /** Frozen by the book, into portions that are not on record. */
  readonly astray: number
  /** Taken out of the bottle for doses. */
  readonly fresh: number
  readonly spilt: number
  readonly thrown: number
  /** By measuring: what was missing, below zero where there was more than the book said. */
  readonly missing: number
  readonly meals: readonly Meal[]
  readonly losses: readonly Loss[]
}

type Growing = {
  -readonly [Key in keyof Account]: Account[Key] extends readonly (infer Each)[] ? Each[] : Account[Key]
}

/** Each bottle's account, in the order the bottles were recorded. One walk over the ledger, however many there are. */
export const bottleAccounts = (state: FoodTold): ReadonlyMap<BottleId, Account> => {
  const accounts = new Map<BottleId, Growing>()
  for (const bottle of state.bottles.values()) accounts.set(bottle.id, opened(bottle))
  const bags = emptyBags(state)
  const bottleOf = (origin: LotId): Growing | undefined => {
    const made = state.lots.get(origin)?.made
    return made?.kind === 'portionsFrozen' ? accounts.get(made.bottle) : undefined
  }
  const out = (account: Growing, at: Moment, amount: number) => {
    if (at < account.bottle.recorded.at) account.held += amount
  }

  const freeze = (id: Stamp, fact: PortionsFrozen) => {
    const account = accounts.get(fact.bottle)
    if (!account) return
    out(account, fact.at, fact.taken)
    // Written twice under one name, the later stands for the portions: what the other took out is in no bag.
    if (state.lots.get(fact.lot)?.entry === id) account.drips += fact.taken - fact.portions * fact.each
    else account.astray += fact.taken
  }

  /** What is taken for a dose, by bottle and by freezing. */
  const taken = (of: readonly Taken[], at: Moment): readonly Part[] =>
    of.flatMap((part): readonly Part[] => {
      if (part.from === 'portions')
        return bags.take(part.lot, at, part.count, 'given').map(([origin, count]) => {
          const made = state.lots.get(origin)?.made
          return { account: bottleOf(origin), amount: count * (made?.each ?? 0), frozenOn: made?.frozenOn }
        })
      const account = accounts.get(part.bottle)
      if (account) {
        out(account, at, part.amount)
        account.fresh += part.amount
      }
      return [{ account, amount: part.amount, frozenOn: undefined }]
    })

  const dose = (fact: DoseGiven | DoseGivenOffPlan) => {
    const parts = taken(fact.taken, fact.at)
    for (const { tank, night, amount } of fact.served)
      if (amount > 0) share(parts, { tank, night, at: fact.at, doses: 1, amount, counted: false })
  }
  const count = (fact: NightsCounted) => {
    const parts = fact.lots.flatMap(({ lot, counted, book }) => {
      const used = taken([{ from: 'portions', lot, count: Math.max(0, book - counted) }], fact.at)
      bags.recount(lot, counted)
      return used
    })
    const tanks = new Set(fact.rounds.map(({ tank }) => tank))
    const night = fact.rounds
      .map(({ to }) => to)
      .sort(byText)
      .at(-1)
    const tank = tanks.size === 1 ? fact.rounds[0]?.tank : undefined
    if (night && fact.doses > 0)
      share(parts, { tank, night, at: fact.at, doses: fact.doses, amount: fact.amount, counted: true })
  }
  const lose = (lot: LotId, fact: { at: Moment; count: number; fate: Fate; why?: string }) => {
    for (const [origin, gone] of bags.take(lot, fact.at, fact.count, fact.fate)) {
      const each = state.lots.get(origin)?.made.each ?? 0
      const { at, fate, why } = fact
      bottleOf(origin)?.losses.push({ at, amount: gone * each, portions: gone, fate, why })
    }
  }

  for (const { id, fact: told } of state.history.all) {
    if (state.history.struck.has(id)) continue
    // Kinds of other subjects fall through.
    const fact = told as FoodFact | DosingFact
    switch (fact.kind) {
      case 'portionsFrozen':
        freeze(id, fact)
        break
      case 'doseGiven':
      case 'doseGivenOffPlan':
        dose(fact)
        break
      case 'nightsCounted':
        count(fact)
        break
      case 'portionsGone':
        lose(fact.lot, fact)
        break
      case 'portionsGivenAway':
        bags.take(fact.lot, fact.at, fact.count, 'givenAway')
        break
      case 'portionsFound':
        bags.find(fact.lot, fact.at, fact.count)
        break
      case 'portionsCounted':
        bags.recount(fact.lot, fact.counted)
        break
      case 'portionsMoved':
        bags.move(id, fact)
        break
      case 'lotsJoined':
        bags.join(fact)
        break
      case 'liquidGone': {
        const account = accounts.get(fact.bottle)
        if (!account) break
        out(account, fact.at, fact.amount)
        account[fact.fate === 'lost' ? 'spilt' : 'thrown'] += fact.amount
        const { at, amount, fate, why } = fact
        account.losses.push({ at, amount, portions: undefined, fate, why })
        break
      }
    }
  }

  for (const made of bags.byOrigin()) {
    const known = state.lots.get(made.lot)?.made
    const account = bottleOf(made.lot)
    if (!known || !account) continue
    account.lots.push({ ...made, each: known.each, frozenOn: known.frozenOn, made: known.portions })
  }
  return accounts
}

type Part = {
  readonly account: Growing | undefined
  readonly amount: number
  readonly frozenOn: Day | undefined
}

const opened = (bottle: Bottle): Growing => {
  const { size, contents } = bottle.recorded
  return {
    bottle,
    whole: bottleAmount(size.value, size.unit),
    held: contents,
    lots: [],
    drips: 0,
    astray: 0,
    fresh: 0,
    spilt: 0,
    thrown: 0,
    missing: bottle.observations.reduce((sum, { found, bookNow }) => sum + bookNow - found, 0),
    meals: [],
    losses: [],
  }
}

/** A dose is laid to the bottles it came from by what each gave. */
const share = (parts: readonly Part[], served: Omit<Meal, 'from' | 'frozenOn'>) => {
  const whole = parts.reduce((sum, { amount }) => sum + amount, 0)
  if (whole <= 0) return
  for (const { account, amount, frozenOn } of parts) {
    if (!account || amount <= 0) continue
    const part = amount / whole
    account.meals.push({
      ...served,
      doses: served.doses * part,
      amount: served.amount * part,
      from: frozenOn === undefined ? 'fresh' : 'frozen',
      frozenOn,
    })
  }
}
