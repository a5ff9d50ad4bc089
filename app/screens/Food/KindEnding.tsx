/** A food that is no longer bought, and one that comes back. */
import { useLocation } from 'wouter'
import { type FoodDescribed, foodRetired, ok, retireFood } from '../../../core/index.ts'
import { useReading } from '../useReading.ts'
import { BringBack } from './BringBack.tsx'
import { Deed } from './Deed.tsx'
import { placed } from './useAct.ts'

export const KindEnding = ({ food }: { readonly food: FoodDescribed }) => {
  const { world, now } = useReading()
  const [, go] = useLocation()
  if (foodRetired(world, food.food, now)) return null
  return (
    <Deed
      label="No longer bought"
      act="Take it off the list; its plans end"
      says=""
      reasons={['anotherFood', 'notSold', 'tooDear']}
      onDone={() => go('/food')}
      ask={(why) => (latest, at) => placed(retireFood(latest, { food: food.food, ...why }, at.now), '')}
    />
  )
}

export const KindBack = ({ food }: { readonly food: FoodDescribed }) => {
  const { world, now } = useReading()
  if (!foodRetired(world, food.food, now)) return null
  return (
    <BringBack
      says="What is left of it stays on its shelf, and its past in the diary."
      ask={(_, at) => ok([{ ...food, at: at.now }])}
    />
  )
}
