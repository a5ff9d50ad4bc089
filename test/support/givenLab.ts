/** The school's marine lab: three tanks, two foods, three doors. Made through the requests a person would use. */
import {
  type BottleAsked,
  type BottleId,
  type Day,
  type DoseAsked,
  day,
  describeFood,
  describePlace,
  describeTank,
  type Fact,
  type FoodAsked,
  type FoodId,
  fromMillilitres,
  giveDose,
  type Kept,
  type LotId,
  type Moment,
  newFood,
  type PlaceId,
  type PlanId,
  type PlanMade,
  recordBottle,
  recordPortionsOnHand,
  type TankAsked,
  type TankId,
  type TonightLine,
  tonight,
  type WaterAmount,
  type World,
} from '../../core/index.ts'
import { at, done, london } from './given.ts'

export const mL = fromMillilitres
export const usGal = (value: number): WaterAmount => ({ value, unit: 'usGal' })

export const longGallery = 'longgallery' as TankId
export const cockle = 'cockle' as TankId
export const limpetShelf = 'limpetshelf' as TankId
export const greenFood = 'greenfood' as FoodId
export const amberFood = 'amberfood' as FoodId
export const kitchenFridge = 'kitchenfridge' as PlaceId
export const kitchenFreezer = 'kitchenfreezer' as PlaceId
export const boathouseFreezer = 'boathousefreezer' as PlaceId
export const greenPlan = 'greenplan' as PlanId
export const cocklePlan = 'cockleplan' as PlanId
export const firstBottle = 'bottle1' as BottleId
export const blueClip = 'blueclip' as LotId
export const redClip = 'redclip' as LotId

/** Long before anything a scenario tells of. */
export const moveIn = at('2026-01-02 11:11')

export const tankOf = (tank: TankId, water: WaterAmount, more: Partial<TankAsked> = {}): readonly Fact[] =>
  done(
    describeTank(
      {
        tank,
        name: tank,
        water: { stated: water, about: false, doseBy: 'stated' },
        zone: london,
        lightsOut: '21:00',
        pipetteMark: mL(0.05),
        ...more,
      },
      moveIn,
    ),
  )

export const foodOf = (food: FoodId, more: Partial<FoodAsked> = {}): readonly Fact[] =>
  done(describeFood({ ...newFood(food, food, 'freshNonViable'), ...more }, moveIn))

export const doors: readonly Fact[] = [
  ...describePlace({ place: kitchenFridge, name: 'kitchen', door: 'fridge' }, moveIn),
  ...describePlace({ place: kitchenFreezer, name: 'kitchen', door: 'freezer' }, moveIn),
  ...describePlace({ place: boathouseFreezer, name: 'boathouse', door: 'freezer' }, moveIn),
]

/** Green food for Long Gallery, 200 US gal, and the doors it stands behind. */
export const lab: readonly Fact[] = [...tankOf(longGallery, usGal(200)), ...foodOf(greenFood), ...doors]

export type PlanGiven = { first: string; amount: number; every?: number; tank?: TankId; food?: FoodId; plan?: PlanId }
export const planOf = ({ first, amount, every = 2, ...more }: PlanGiven): PlanMade => ({
  kind: 'planMade',
  at: moveIn,
  plan: greenPlan,
  tank: longGallery,
  food: greenFood,
  everyNights: every,
  firstNight: day(first),
  amount: mL(amount),
  ...more,
})

type OnHandGiven = {
  portions: number
  each: number
  frozen: string
  seen?: Moment
  lot?: LotId
  food?: FoodId
  kept?: Kept
  place?: PlaceId
  about?: boolean
}
/** Portions that are there already when the story begins. */
export const onHand =
  ({ seen, ...more }: OnHandGiven) =>
  (world: World): readonly Fact[] =>
    done(
      recordPortionsOnHand(
        world,
        {
          lot: more.lot ?? blueClip,
          food: more.food ?? greenFood,
          mark: more.lot ?? 'blue clip',
          portions: more.portions,
          each: mL(more.each),
          frozenOn: day(more.frozen),
          kept: more.kept ?? { as: 'loose' },
          place: more.place ?? kitchenFreezer,
          about: more.about ?? false,
        },
        { now: seen ?? at(`${more.frozen} 18:30`), zone: london },
      ),
    )

type BottleGiven = Partial<Omit<BottleAsked, 'receivedOn' | 'openedOn'>> & {
  holds: number
  received?: string
  opened?: string
  seen?: Moment
}
const dayIf = (text: string | undefined): Day | undefined => (text === undefined ? undefined : day(text))
export const bottleOf =
  ({ holds, received, opened, seen, ...more }: BottleGiven) =>
  (world: World): readonly Fact[] =>
    done(
      recordBottle(
        world,
        {
          bottle: firstBottle,
          food: greenFood,
          size: { value: holds, unit: 'mL' },
          full: 1,
          receivedOn: dayIf(received),
          openedOn: dayIf(opened),
          place: kitchenFridge,
          ...more,
        },
        { now: seen ?? at(`${opened ?? received ?? '2026-01-02'} 17:45`), zone: london },
      ),
    )

export const lineOf = (world: World, now: Moment, plan: PlanId = greenPlan): TonightLine => {
  const line = tonight(world, now).find((each) => each.plan.plan === plan)
  if (!line) throw new Error(`${plan} has no line tonight`)
  return line
}

/** Gives what is proposed first, unless the story says what else. */
export const dose =
  (now: Moment, more: Partial<DoseAsked> = {}) =>
  (world: World): ReturnType<typeof giveDose> => {
    const plan = more.plan ?? greenPlan
    const [best] = more.taken ? [] : lineOf(world, now, plan).servings
    const taken = best ? [best.taken] : []
    return giveDose(world, { plan, taken, amount: best?.amount ?? mL(0), at: now, ...more }, now)
  }

/** One portion of a lot, whatever is proposed. */
export const portionOf = (lot: LotId, each: number, count = 1): Pick<DoseAsked, 'taken' | 'amount'> => ({
  taken: [{ from: 'portions', lot, count }],
  amount: mL(each * count),
})
