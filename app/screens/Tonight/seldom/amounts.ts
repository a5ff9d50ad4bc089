/** What the quick touches mean of a serving: twice, half, the whole of it. */
import { type Microlitres, microlitres, type Serving, type TankId } from '../../../../core/index.ts'
import type { Dose } from '../useDosing.ts'

/** All of what is taken, whether it is for this tank or not. */
const inAll = ({ source, taken }: Serving): Microlitres =>
  taken.from === 'portions' && source.from === 'portions'
    ? microlitres(taken.count * source.each)
    : taken.from === 'bottle'
      ? taken.amount
      : microlitres(0)

export const whole = (serving: Serving): Dose => ({ taken: [serving.taken], amount: inAll(serving) })

export const twice = (serving: Serving): Dose => {
  const { taken } = serving
  return {
    taken: [
      taken.from === 'portions'
        ? { ...taken, count: taken.count * 2 }
        : { ...taken, amount: microlitres(taken.amount * 2) },
    ],
    amount: microlitres(inAll(serving) * 2),
  }
}

/** Half of what thawed; the rest goes to another tank the same night, or is thrown away. A bottle is poured half as far. */
export const half = (serving: Serving, rest?: TankId): Dose => {
  const { taken } = serving
  const all = inAll(serving)
  const amount = microlitres(Math.round(all / 2))
  if (taken.from === 'bottle') return { taken: [{ ...taken, amount }], amount }
  return {
    taken: [taken],
    amount,
    ...(rest ? { rest: { tank: rest, amount: microlitres(all - amount) } } : {}),
  }
}
