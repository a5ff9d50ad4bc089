/** One portion for several tanks. */
import { litres, type Microlitres, microlitres } from '../basis/amounts.ts'
import type { TankId } from '../basis/ids.ts'
import { stepsWithin } from '../basis/numbers.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { doseWater } from '../tank/state.ts'

export type Share = { readonly tank: TankId; readonly amount: Microlitres }

/**
 * Shares an amount by the water in each tank, in whole marks of each tank's pipette and never more than there is in all: a
 * mark that is left over goes to whoever is furthest below its share. Undefined where a tank's water is not known.
 */
export const shareByVolume = (total: Microlitres, tanks: readonly TankDescribed[]): readonly Share[] | undefined => {
  const volumes: number[] = []
  for (const { water } of tanks) {
    const dosed = doseWater(water)
    if (!dosed) return undefined
    volumes.push(litres(dosed))
  }
  const whole = volumes.reduce((sum, volume) => sum + volume, 0)
  const parts = tanks.map(({ tank, pipetteMark }, at) => {
    const exact = (total * (volumes[at] ?? 0)) / whole
    return { tank, mark: pipetteMark, exact, amount: stepsWithin(exact, pipetteMark) * pipetteMark }
  })
  let rest = total - parts.reduce((sum, { amount }) => sum + amount, 0)
  const short = ({ exact, amount, mark }: (typeof parts)[number]) => (exact - amount) / mark
  for (const part of parts.toSorted((a, b) => short(b) - short(a))) {
    // A share that came out even is not topped up by another's crumb.
    if (part.mark > rest || short(part) < 1e-6) continue
    part.amount += part.mark
    rest -= part.mark
  }
  return parts.map(({ tank, amount }) => ({ tank, amount: microlitres(amount) }))
}
