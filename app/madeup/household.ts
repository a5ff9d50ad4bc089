/**
 * A household to look round in, told through the requests a person would use: some weeks of a school's marine lab that end
 * yesterday, so that tonight is a dose night and everything is in date. It reads no clock and rolls no dice: where and when
 * are told.
 */
import {
  addDays,
  type BottleId,
  countPortions,
  type DeviceId,
  describeFood,
  describePlace,
  describeTank,
  type Entry,
  type Fact,
  type FoodId,
  fillTrays,
  fromMillilitres,
  type LotId,
  liquidGone,
  type Moment,
  makePlan,
  newFood,
  nightOf,
  ok,
  type PlaceId,
  type PlanId,
  portionsGone,
  recordBottle,
  recordFreezing,
  recordPortionsOnHand,
  shakeBottles,
  type TankId,
  writeNote,
  type Zone,
} from '../../core/index.ts'
import { names } from '../words/madeUp.ts'
import type { Reason } from '../words/reasons.ts'
import { asProposed, crossOutLast, everyOther } from './nights.ts'
import { done, type Step, told } from './telling.ts'

export type MadeUpAsked = {
  readonly now: Moment
  readonly zone: Zone
  readonly device: DeviceId
  readonly newId: <Id extends string>() => Id
}

/** Even, so that every other night comes round to tonight. */
const firstNight = 36
const bottleCame = 23
const mL = fromMillilitres
const why = (reason: Reason) => ({ why: reason })
const inTrays = (portions: number) => ({
  portions,
  each: mL(1),
  kept: { as: 'trays', trays: fillTrays(portions, 4, 6) } as const,
})

export const madeUp = ({ now, zone, device, newId }: MadeUpAsked): readonly Entry<Fact>[] => {
  const [tank, food, plan, bottle] = [newId<TankId>(), newId<FoodId>(), newId<PlanId>(), newId<BottleId>()]
  const [fridge, freezer] = [newId<PlaceId>(), newId<PlaceId>()]
  const [older, newer] = [newId<LotId>(), newId<LotId>()]
  const asked = {
    tank,
    name: names.tank,
    water: { stated: { value: 200, unit: 'usGal' }, about: false, doseBy: 'stated' },
    zone,
    lightsOut: '21:00',
    pipetteMark: mL(0.05),
  } as const
  const night = nightOf(now, done(describeTank(asked, now))[0])
  const ago = (days: number) => addDays(night, -days)

  const begins: readonly Step[] = [
    [firstNight + 1, '16:10', (_, at) => describeTank(asked, at)],
    [firstNight + 1, '16:12', (_, at) => describeFood(newFood(food, names.food, 'freshNonViable'), at)],
    [firstNight + 1, '16:14', (_, at) => ok(describePlace({ place: fridge, name: names.fridge, door: 'fridge' }, at))],
    [
      firstNight + 1,
      '16:15',
      (_, at) => ok(describePlace({ place: freezer, name: names.freezer, door: 'freezer' }, at)),
    ],
    [
      firstNight + 1,
      '16:20',
      (world, at) => {
        const bag = { lot: older, mark: names.olderBag, frozenOn: ago(98), place: freezer, ...inTrays(60) }
        return recordPortionsOnHand(world, { ...bag, food, about: false }, { now: at, zone })
      },
    ],
    [
      firstNight + 1,
      '16:24',
      (world, at) =>
        makePlan(world, { plan, tank, food, amount: mL(1), everyNights: 2, firstNight: ago(firstNight) }, at),
    ],
  ]
  const aBottleComes: readonly Step[] = [
    [
      bottleCame,
      '17:35',
      (world, at) => {
        const day = ago(bottleCame)
        const size = { value: 120, unit: 'mL' } as const
        const dates = { receivedOn: day, openedOn: day }
        return recordBottle(world, { bottle, food, size, full: 1, ...dates, place: fridge }, { now: at, zone })
      },
    ],
    [
      bottleCame - 1,
      '18:05',
      (world, at) => {
        const bag = { lot: newer, mark: names.newerBag, frozenOn: ago(bottleCame - 1), place: freezer, ...inTrays(48) }
        return recordFreezing(world, { ...bag, bottle }, { now: at, zone })
      },
    ],
    ...[19, 13, 7, 1].map((days): Step => [days, '18:40', (_, at) => ok(shakeBottles([bottle], at))]),
  ]
  const happenings: readonly Step[] = [
    [30, '20:55', (world, at) => portionsGone(world, { lot: older, count: 1, fate: 'lost', ...why('dropped') }, at)],
    [
      21,
      '10:40',
      (world, at) => {
        const counted = (world.lots.get(older)?.left ?? 0) - 1
        return countPortions(world, { lot: older, counted, ...why('stuck') }, at)
      },
    ],
    [15, '19:10', (world, at) => liquidGone(world, { bottle, amount: mL(3), fate: 'lost', ...why('spilt') }, at)],
    [9, '21:50', (_, at) => writeNote({ text: names.note, at, tank }, at)],
    [5, '21:30', asProposed(plan)],
    [5, '21:33', crossOutLast],
  ]
  return told([...begins, ...aBottleComes, ...everyOther(plan, firstNight), ...happenings], night, zone, device)
}
