/** Does one portion suit each tank that is fed with it? */
import {
  bandOf,
  type FoodId,
  foodAt,
  type Microlitres,
  plansAt,
  portionFit,
  portionsPerDose,
  tankAt,
} from '../../../core/index.ts'
import { tankFitWords } from '../../words/freezing.ts'
import { useReading } from '../useReading.ts'

export const FitLines = ({ each, food }: { readonly each: Microlitres; readonly food: FoodId }) => {
  const { world, now } = useReading()
  const described = foodAt(world, food, now)
  const said = plansAt(world, now).flatMap((plan) => {
    const tank = tankAt(world, plan.tank, now)
    const band = tank && described && bandOf(tank, described)
    if (plan.food !== food || !band) return []
    const words = tankFitWords(tank.name, portionFit(each, band), plan.amount, each, portionsPerDose(plan.amount, each))
    return [<p key={plan.plan}>{words}</p>]
  })
  return said.length > 0 && <div className="shelf-facts">{said}</div>
}
