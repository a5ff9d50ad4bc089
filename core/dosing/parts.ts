/** More or less than the usual: twice, half, the whole of a large portion, a part of what was taken. */
import { type Microlitres, microlitres } from '../basis/amounts.ts'
import type { FoodId } from '../basis/ids.ts'
import type { FoodState } from '../food/state.ts'
import type { Taken } from './facts.ts'
import type { Serving, Source } from './serve.ts'

export type Amounts = {
  readonly taken: readonly Taken[]
  /** What reached the tank. */
  readonly amount: Microlitres
  /** What thawed with it and did not: another tank's the same night, or thrown away. */
  readonly rest: Microlitres
}

/** All of what is taken, whether it is for this tank or not. */
const inAll = ({ source, taken }: Serving): Microlitres =>
  taken.from === 'bottle' ? taken.amount : microlitres(source.from === 'portions' ? taken.count * source.each : 0)

const nothing = microlitres(0)

export const wholeOf = (serving: Serving): Amounts => ({
  taken: [serving.taken],
  amount: inAll(serving),
  rest: nothing,
})

export const twiceOf = (serving: Serving): Amounts => {
  const { taken } = serving
  const twice: Taken =
    taken.from === 'portions'
      ? { ...taken, count: taken.count * 2 }
      : { ...taken, amount: microlitres(taken.amount * 2) }
  return { taken: [twice], amount: microlitres(inAll(serving) * 2), rest: nothing }
}

/** Half of what thawed: the stock is as much less as if it were all. A bottle is only poured half as far. */
export const halfOf = (serving: Serving): Amounts => {
  const { taken } = serving
  const all = inAll(serving)
  const amount = microlitres(Math.round(all / 2))
  return taken.from === 'bottle'
    ? { taken: [{ ...taken, amount }], amount, rest: nothing }
    : { taken: [taken], amount, rest: microlitres(all - amount) }
}

/**
 * The part of one portion that a dose is, as a fraction that the eye can pour from a cup nobody has measured. In eighths,
 * rounded down, for less is safe, but never to nothing.
 */
export const shareOfOne = (amount: Microlitres, each: Microlitres): { readonly parts: number; readonly of: number } => {
  let parts = Math.min(8, Math.max(1, Math.floor((amount * 8) / each)))
  let of = 8
  while (parts % 2 === 0 && of > 1) {
    parts /= 2
    of /= 2
  }
  return { parts, of }
}

/** What reached water of so many portions, a share of it thrown away. */
export const partOf = (count: number, each: Microlitres, share: number): Microlitres =>
  microlitres(Math.round(count * each * share))

/** The book may be wrong: lots that are empty by it can still have held one. Those filled last first. */
export const emptySources = ({ lots }: FoodState, food: FoodId): readonly Source[] =>
  [...lots.values()]
    .filter(({ made, left }) => made.food === food && left <= 0)
    .toSorted((a, b) => b.made.at - a.made.at)
    .map(({ id, made }) => ({
      from: 'portions',
      lot: id,
      each: made.each,
      left: 0,
      lastGood: undefined,
      since: made.frozenOn,
    }))
