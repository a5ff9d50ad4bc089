/** The plan of a night as it is typed, what stands there at first, and what the core makes of it. */
import {
  type Animals,
  addDays,
  type BottleUnit,
  bottlesNeeded,
  type Day,
  doseWater,
  equipmentAt,
  type LiveBottlesCame,
  lampOut,
  type Moment,
  moment,
  nightOf,
  parcelAt,
  parcelsWaiting,
  podHuntersAt,
  type RunId,
  type SeedingAsked,
  type SeedingPlanned,
  type TankDescribed,
  usualReach,
  usualSplit,
  type WaterPlace,
  type World,
} from '../../../core/index.ts'
import { newId } from '../../state/ids.ts'
import { clock } from '../../words/dates.ts'
import { asTyped, typedMillilitres } from '../../words/numbers.ts'
import {
  afterThat,
  amountIn,
  type Gathered,
  inNight,
  maybe,
  noPours,
  numberIn,
  type PlaceFields,
  poursIn,
} from './reading.ts'

export type PlanFields = PlaceFields & {
  readonly run: RunId
  readonly night: Day
  readonly off: string
  readonly morning: string
  readonly animals: readonly Animals[]
  readonly holds: string
  readonly unit: BottleUnit
  readonly waterOut: SeedingPlanned['waterOut']
  readonly rinse: 'none' | 'newSaltWater' | 'tankWater'
  /** Millilitres. */
  readonly rinseEach: string
  /** Parts per thousand. */
  readonly tankSalt: string
  readonly bottleSalt: string
  readonly anyway: string
}

/** Millilitres for each bottle. Our own judgement. */
const usualRinse = '100'
const minute = 60_000
/** Minutes from dark to pumps off, and from now if that is later: what comes before needs half an hour. Our own judgement. */
const lead = { dark: 30, now: 35 } as const
const upTo5 = (at: number): Moment => moment(Math.ceil(at / (5 * minute)) * 5 * minute)

/** When the pumps might go off in a night. */
export const usualOff = (world: World, tank: TankDescribed, night: Day, now: Moment): Moment =>
  upTo5(Math.max(lampOut(world, tank, night) + lead.dark * minute, now + lead.now * minute))

export const planFields = (world: World, tank: TankDescribed, now: Moment): PlanFields => {
  const parcel = parcelOf(undefined, world, now)
  const water = doseWater(tank.water)
  const hunters = podHuntersAt(world, tank.tank, now)?.there ?? false
  const needed = water && bottlesNeeded(water, usualReach, hunters)
  const bottles = parcel?.bottles.reduce((sum, { count }) => sum + count, 0) ?? (needed?.ok ? needed.value.bottles : 1)
  const places = equipmentAt(world, tank.tank, now)?.places.map(({ place }) => place) ?? ['display']
  const tonight = nightOf(now, tank)
  // Past the hour at which the night is over anyway, tomorrow's.
  const night = nightOf(usualOff(world, tank, tonight, now), tank) === tonight ? tonight : addDays(tonight, 1)
  const holds = parcel?.bottles[0]?.holds
  return {
    ...noPours,
    ...Object.fromEntries(usualSplit(bottles, places).map(({ into, bottles: count }) => [into, asTyped(count)])),
    run: newId<RunId>(),
    night,
    off: clock(usualOff(world, tank, night, now), tank.zone),
    morning: '07:30',
    animals: parcel ? [...new Set(parcel.bottles.map(({ animals }) => animals))] : ['copepods'],
    holds: holds === undefined ? '' : typedMillilitres(holds),
    unit: 'mL',
    waterOut: 'after',
    rinse: 'newSaltWater',
    rinseEach: usualRinse,
    tankSalt: typedSalt(lastSalt(world, tank)),
    bottleSalt: '',
    anyway: '',
  }
}

const typedSalt = (salt: number | undefined): string => (salt === undefined ? '' : asTyped(salt))
/** What the tank's salt was at the pour before: it is kept where it is. */
const lastSalt = ({ runs }: World, { tank }: TankDescribed): number | undefined =>
  [...runs.values()]
    .flatMap(({ planned }) => planned)
    .filter((plan) => plan.tank === tank && plan.tankSalt !== undefined)
    .sort((a, b) => a.at - b.at)
    .at(-1)?.tankSalt

/** The plan in force as it would be typed. */
export const fieldsOfPlan = (plan: SeedingPlanned, { zone }: TankDescribed): PlanFields => {
  const { run, night, off, morning, animals, pours, holds, waterOut, rinse, tankSalt, bottleSalt, anyway = '' } = plan
  const into = (place: WaterPlace): string => {
    const bottles = pours.reduce((sum, pour) => (pour.into === place ? sum + pour.bottles : sum), 0)
    return bottles > 0 ? asTyped(bottles) : ''
  }
  return {
    run,
    night,
    display: into('display'),
    sump: into('sump'),
    refugium: into('refugium'),
    off: clock(off, zone),
    morning: clock(morning, zone),
    animals,
    holds: typedMillilitres(holds),
    unit: 'mL',
    waterOut,
    rinse: rinse?.of ?? 'none',
    rinseEach: rinse ? typedMillilitres(rinse.each) : usualRinse,
    tankSalt: typedSalt(tankSalt),
    bottleSalt: typedSalt(bottleSalt),
    anyway,
  }
}

/** The bottles a plan is about: those it was made for, or the last that came. */
export const parcelOf = (plan: SeedingPlanned | undefined, world: World, now: Moment): LiveBottlesCame | undefined =>
  plan ? plan.parcel && parcelAt(world, plan.parcel, now) : parcelsWaiting(world, now)[0]

export type PlanRead = { readonly found: Gathered; readonly asked: SeedingAsked | undefined }

/** @param before the plan that is written again */
export const readPlan = (
  fields: PlanFields,
  tank: TankDescribed,
  world: World,
  now: Moment,
  before?: SeedingPlanned,
): PlanRead => {
  const found: Gathered = []
  const off = inNight(fields.night, fields.off, tank)
  if (off === undefined) found.push({ at: 'off', refusal: { why: 'whenMissing' } })
  const morning = off && afterThat(off, fields.morning, tank)
  if (off !== undefined && morning === undefined) found.push({ at: 'morning', refusal: { why: 'whenMissing' } })
  if (fields.animals.length === 0) found.push({ at: 'animals', refusal: { why: 'animalsMissing' } })
  const places = equipmentAt(world, tank.tank, now)?.places.map(({ place }) => place) ?? []
  const pours = poursIn(found, fields, places)
  const holds = amountIn(found, 'holds', fields.holds, fields.unit)
  const each = fields.rinse === 'none' ? undefined : amountIn(found, 'rinseEach', fields.rinseEach, 'mL')
  const salt = {
    ...maybe('tankSalt', numberIn(found, 'tankSalt', fields.tankSalt)),
    ...maybe('bottleSalt', numberIn(found, 'bottleSalt', fields.bottleSalt)),
  }
  const anyway = fields.anyway.trim()
  const parcel = before ? before.parcel : parcelOf(undefined, world, now)?.parcel
  if (found.length > 0 || off === undefined || morning === undefined || holds === undefined)
    return { found, asked: undefined }
  return {
    found,
    asked: {
      run: fields.run,
      tank: tank.tank,
      ...(parcel ? { parcel } : {}),
      animals: fields.animals,
      pours,
      holds,
      waterOut: fields.waterOut,
      ...(fields.rinse !== 'none' && each !== undefined ? { rinse: { each, of: fields.rinse } } : {}),
      ...salt,
      off,
      morning,
      ...(anyway ? { anyway } : {}),
    },
  }
}
