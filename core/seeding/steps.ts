/** The steps of a pour, made from what runs on this tank, in the order that is safe. */
import { type Moment, moment } from '../basis/zones.ts'
import type { WaterPlace } from '../watch/facts.ts'
import type { DeviceSort, EquipmentDescribed, SeedingPlanned } from './facts.ts'

export type StepDoes = 'off' | 'on' | 'out' | 'in' | 'dark' | 'level' | 'waterOut' | 'pour' | 'look'
export type Step = {
  /** Known by its key: what it does, and to which device or place. */
  readonly step: string
  readonly does: StepDoes
  readonly device?: DeviceSort
  readonly place?: WaterPlace
  readonly at: Moment
}

const minute = 60_000
/** Minutes from the moment the pumps are off. The order is the trade's; the minutes are common practice, no source. */
const clock = { first: -30, dark: -20, lamps: -15, pumps: 0, water: 3, pour: 5, rest: 15, back: 60 } as const
/** The longest a pump stays off. */
export const mostPumpMinutes = clock.back

const feedAndDose: readonly DeviceSort[] = ['topOff', 'dosingPump', 'reactor', 'feeder', 'controller', 'sock']
const killAndSkim: readonly DeviceSort[] = ['skimmer', 'uv', 'ozone']
const flow: readonly DeviceSort[] = ['return', 'wave']
/** In the morning what cleans the water first; what fills and skims once the level has settled. */
const morningFirst: readonly DeviceSort[] = ['uv', 'ozone', 'sock']
const morningLast: readonly DeviceSort[] = ['dosingPump', 'reactor', 'feeder', 'controller', 'topOff', 'skimmer']

export type RunAsked = Pick<SeedingPlanned, 'pours' | 'waterOut' | 'off' | 'morning'>

/**
 * Everything to do from half an hour before the pumps stop until the morning. A sump heater goes on with the pumps again:
 * with the level back it is covered, and a night without it would cool the tank.
 */
export const stepsOf = (
  { devices, places }: Pick<EquipmentDescribed, 'devices' | 'places'>,
  { pours, waterOut, off, morning }: RunAsked,
): readonly Step[] => {
  const at = (minutes: number): Moment => moment(off + minutes * minute)
  const stopping = (sorts: readonly DeviceSort[]) =>
    sorts.flatMap((sort) => devices.filter(({ device, stops }) => stops && device === sort))
  const turned = (sorts: readonly DeviceSort[], way: 'off' | 'on', when: Moment): Step[] =>
    stopping(sorts).map(({ key, device }) => {
      const does = device === 'sock' ? (way === 'off' ? 'out' : 'in') : way
      return { step: `${key}-${does}`, does, device, at: when }
    })
  const into = [...new Set(pours.map((pour) => pour.into))]
  const mayBeLit = (place: WaterPlace) =>
    place !== 'display' && (places.find((it) => it.place === place)?.mayBeLit ?? false)
  return [
    ...turned(feedAndDose, 'off', at(clock.first)),
    ...into
      .filter((place) => !mayBeLit(place))
      .map((place): Step => ({ step: `dark-${place}`, does: 'dark', place, at: at(clock.dark) })),
    ...turned(killAndSkim, 'off', at(clock.lamps)),
    ...turned(flow, 'off', at(clock.pumps)),
    ...(stopping(['return']).length > 0 ? [{ step: 'level', does: 'level' as const, at: at(clock.pumps) }] : []),
    ...turned(['sumpHeater'], 'off', at(clock.pumps)),
    ...(waterOut === 'after' ? [] : [{ step: 'waterOut', does: 'waterOut' as const, at: at(clock.water) }]),
    ...into.map((place): Step => ({ step: `pour-${place}`, does: 'pour', place, at: at(clock.pour) })),
    ...(waterOut === 'before' ? [] : [{ step: 'waterOutRest', does: 'waterOut' as const, at: at(clock.rest) }]),
    ...turned(flow, 'on', at(clock.back)),
    ...turned(['sumpHeater'], 'on', at(clock.back)),
    ...turned(morningFirst, 'on', morning),
    { step: 'morningLook', does: 'look', at: morning },
    ...turned(morningLast, 'on', morning),
  ]
}

const devicesFrom: Readonly<Record<string, StepDoes>> = { off: 'off', on: 'on', out: 'out', in: 'in' }
const places: readonly WaterPlace[] = ['display', 'sump', 'refugium']

/** Reads a step's key back: what it does and to what; undefined for one of a newer version. */
export const readStep = (
  step: string,
): { readonly does: StepDoes; readonly key?: string; readonly place?: WaterPlace } | undefined => {
  if (step === 'level') return { does: 'level' }
  if (step === 'morningLook') return { does: 'look' }
  if (step === 'waterOut' || step === 'waterOutRest') return { does: 'waterOut' }
  const cut = step.lastIndexOf('-')
  const [key, way] = [step.slice(0, cut), step.slice(cut + 1)]
  const place = places.find((each) => each === way)
  if (place && (key === 'dark' || key === 'pour')) return { does: key, place }
  const does = devicesFrom[way]
  return does && cut > 0 ? { does, key } : undefined
}
