/** A tank's form: what is typed, and what the core makes of it. Shared by the first evening and by Water. */
import {
  describeTank,
  type ExactWater,
  type LampClock,
  type Moment,
  measuresOf,
  noteMeasures,
  ok,
  readMillilitres,
  readWater,
  type TankDescribed,
  type TankId,
  type TankRefusal,
  type TankWater,
  vastMeasures,
  type WaterAmount,
  type WaterUnit,
  type Zone,
} from '../../../core/index.ts'
import { typedMillilitres } from '../../words/numbers.ts'
import {
  inUnit,
  type MeasureFields,
  measureFieldsOf,
  newMeasureFields,
  readMeasures,
  type TypedMeasure,
  text,
} from './measureFields.ts'
import { all, at, type Read, wrong } from './readFields.ts'

export type TankFields = MeasureFields & {
  readonly name: string
  readonly volume: string
  readonly unit: WaterUnit | undefined
  readonly about: boolean
  /** She was asked whether a vast volume is right. */
  readonly vastIsRight: boolean
  /** The same of a fill or of measurements that make a vast one. */
  readonly vastMeasuresAreRight: boolean
  readonly lightsOut: string
  readonly lamp: LampClock
  readonly zone: string
  readonly mark: string
  readonly measured: string
  readonly doseBy: 'stated' | 'true'
}
/** `measures`: what concerns the measurements as a whole. */
export type TankField = TypedMeasure | 'volume' | 'unit' | 'lightsOut' | 'zone' | 'mark' | 'measured' | 'measures'

/** What a tank is called that was given no name. */
export const usualName = 'Tank'

export const newTankFields = (zone: Zone, name = usualName): TankFields => ({
  name,
  volume: '',
  unit: undefined,
  about: true,
  vastIsRight: false,
  vastMeasuresAreRight: false,
  lightsOut: '21:00',
  lamp: 'followsClocks',
  zone,
  mark: '0.05',
  measured: '',
  doseBy: 'stated',
  ...newMeasureFields,
})

export const fieldsOf = ({
  name,
  water,
  lightsOut,
  lamp = 'followsClocks',
  zone,
  pipetteMark,
}: TankDescribed): TankFields => {
  const { sump, refugium } = measuresOf(water) ?? {}
  const unit = (water.stated ?? water.measured ?? sump ?? refugium)?.unit
  return {
    ...newTankFields(zone),
    name,
    volume: text(water.stated?.value),
    unit,
    about: water.about,
    vastIsRight: true,
    vastMeasuresAreRight: true,
    lightsOut,
    lamp,
    mark: typedMillilitres(pipetteMark),
    measured: inUnit(water.measured, unit ?? 'L'),
    doseBy: water.doseBy,
    ...measureFieldsOf(water, unit ?? 'L'),
  }
}

/** The water alone, or every field of it that does not do. */
export const readTankWater = (fields: TankFields): Read<TankWater> => {
  const unit = fields.unit ?? 'L'
  const knownOtherwise = fields.measured.trim() !== '' || fields.form !== 'none'
  const read = all({
    stated: fields.volume.trim() === '' && knownOtherwise ? ok(undefined) : stated(fields),
    measured: fields.measured.trim() === '' ? ok(undefined) : at('measured', readWater(fields.measured, unit, true)),
    exact: readMeasures(fields, unit),
  })
  if (!read.ok) return read
  const water = waterOf(fields, read.value)
  const vast = fields.vastMeasuresAreRight ? undefined : vastMeasures(water)
  return vast === undefined ? ok(water) : wrong('measures', { why: 'vast', litres: vast })
}

const stated = (fields: TankFields): Read<WaterAmount> => {
  const read = readWater(fields.volume, fields.unit, fields.vastIsRight)
  return at(!read.ok && read.refusal.why === 'unitUnknown' ? 'unit' : 'volume', read)
}

type Parts = {
  readonly stated: WaterAmount | undefined
  readonly measured: WaterAmount | undefined
  readonly exact: ExactWater | undefined
}
const waterOf = ({ about, doseBy }: TankFields, { stated, measured, exact }: Parts): TankWater => ({
  ...(stated ? { stated } : {}),
  about,
  ...(measured ? { measured } : {}),
  ...(exact ? noteMeasures(exact) : {}),
  doseBy,
})

/** As much of it as can be read while she is still typing. */
export const waterSoFar = (fields: TankFields): TankWater => {
  const unit = fields.unit ?? 'L'
  const read = {
    stated: readWater(fields.volume, fields.unit, true),
    measured: readWater(fields.measured, unit, true),
    exact: readMeasures(fields, unit),
  }
  return waterOf(fields, {
    stated: read.stated.ok ? read.stated.value : undefined,
    measured: read.measured.ok ? read.measured.value : undefined,
    exact: read.exact.ok ? read.exact.value : undefined,
  })
}

const fieldOf: Record<TankRefusal['why'], TankField> = {
  noWater: 'volume',
  dryTank: 'measures',
  zoneUnknown: 'zone',
  lightsOutMissing: 'lightsOut',
  markNotPositive: 'mark',
}

/** The whole form, or every field that does not do. */
export const readTank = (tank: TankId, fields: TankFields, now: Moment): Read<readonly [TankDescribed]> => {
  const read = all({ water: readTankWater(fields), mark: at('mark', readMillilitres(fields.mark)) })
  if (!read.ok) return read
  const { water, mark } = read.value
  const { zone, lightsOut, lamp } = fields
  const name = fields.name.trim() || usualName
  // A lamp that follows the clocks goes without saying.
  const clock = lamp === 'followsClocks' ? {} : { lamp }
  const described = describeTank({ tank, name, water, zone, lightsOut, ...clock, pipetteMark: mark }, now)
  return described.ok ? described : wrong(fieldOf[described.refusal.why], described.refusal)
}
