/** What things are called on screen. */
import {
  type Bottle,
  type BottleId,
  bottleAmount,
  type Day,
  type Door,
  type FoodId,
  type FoodKind,
  foodAt,
  type Keeping,
  type LotId,
  type Moment,
  type PlaceId,
  placeAt,
  type TankId,
  tankAt,
  type World,
} from '../../core/index.ts'
import { dayOfMonth, dayWords } from './dates.ts'
import { bottleUnits, inWords, millilitres, number } from './numbers.ts'
import type { Reading } from './reading.ts'

export const tankName = (world: World, tank: TankId, now: Moment): string =>
  tankAt(world, tank, now)?.name ?? 'a tank not on record'
export const foodName = (world: World, food: FoodId, now: Moment): string =>
  foodAt(world, food, now)?.name ?? 'a food not on record'
export const placeName = (world: World, place: PlaceId, now: Moment): string =>
  placeAt(world, place, now)?.name ?? 'a place not on record'
export const lotName = (world: World, lot: LotId): string => world.lots.get(lot)?.made.mark ?? 'portions not on record'

/** "the 120 mL bottle": enough where its food is plain. Beside another of its size it is told apart by its day, else by their order. */
export const bottleShort = (world: World, bottle: BottleId): string => {
  const known = world.bottles.get(bottle)
  if (!known) return 'a bottle not on record'
  const { size } = known.recorded
  const typed = `${number(size.value)}\u00a0${bottleUnits[size.unit]}`
  const metric = size.unit === 'mL' ? '' : ` (${millilitres(bottleAmount(size.value, size.unit))})`
  const alike = [...world.bottles.values()].filter(
    ({ recorded }) =>
      recorded.food === known.recorded.food && recorded.size.value === size.value && recorded.size.unit === size.unit,
  )
  const dated = alike.length > 1 ? datedWords(known) : ''
  const twins = alike.filter((other) => datedWords(other) === datedWords(known))
  const counted = twins.length > 1 ? `, ${twins.indexOf(known) + 1} of ${twins.length}` : ''
  return `the ${typed}${metric} bottle${dated}${counted}`
}
const datedWords = ({ openedOn, recorded: { receivedOn } }: Bottle): string => {
  const day = openedOn ?? receivedOn
  return day ? ` ${openedOn ? 'opened' : 'that came'} ${dayOfMonth(day)}` : ''
}
/** "the 120 mL bottle of green food". */
export const bottleName = (world: World, bottle: BottleId, now: Moment): string => {
  const recorded = world.bottles.get(bottle)?.recorded
  return recorded
    ? `${bottleShort(world, bottle)} of ${foodName(world, recorded.food, now)}`
    : bottleShort(world, bottle)
}

export const doors: Record<Door, string> = { fridge: 'fridge', freezer: 'freezer' }
export const foodKinds: Record<FoodKind, { readonly label: string; readonly hint: string }> = {
  freshNonViable: { label: 'Fresh concentrate', hint: 'Kept cold, feeds but cannot grow. May be frozen.' },
  live: { label: 'Live', hint: 'Still grows. No promise that it survives the freezer.' },
  shelfStable: { label: 'Shelf-stable', hint: 'Kept in a cupboard until opened. No promise for the freezer.' },
}

export const foodKindOptions = (Object.keys(foodKinds) as FoodKind[]).map((value) => ({ value, ...foodKinds[value] }))

/** How it keeps, in words: status is never told by colour. */
export const keepingWords = (keeping: Keeping, lastGood: Day | undefined, { today }: Reading): string => {
  const until = lastGood ? dayWords(lastGood, today) : ''
  switch (keeping.is) {
    case 'good':
      return `good until ${until}`
    case 'useSoon':
      return `use soon: good until ${until}, ${keeping.days === 1 ? 'one more day' : `${inWords(keeping.days)} more days`}`
    case 'lastDay':
      return 'today is its last good day'
    case 'pastItsUsualTime':
      return `${keeping.days === 1 ? 'one day' : `${inWords(keeping.days)} days`} past its usual time: sniff and look`
    case 'past':
      return `past since ${until}`
    case 'unknown':
      return 'no date known'
  }
}
