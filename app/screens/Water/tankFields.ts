/** A tank's form: what is typed, and what the core makes of it. Shared by the first evening and by Water. */
import {
  describeTank,
  type InsideMeasures,
  type LampClock,
  type Moment,
  mostCentimetres,
  ok,
  type Result,
  readMillilitres,
  readNumber,
  readWater,
  refuse,
  type TankDescribed,
  type TankId,
  type TankRefusal,
  type TankWater,
  type WaterAmount,
  type WaterUnit,
  waterReadings,
  type Zone,
} from '../../../core/index.ts'
import { asTyped, typedMillilitres } from '../../words/numbers.ts'
import type { AnyRefusal } from '../../words/refusals.ts'

export type TankFields = {
  readonly name: string
  readonly volume: string
  readonly unit: WaterUnit | undefined
  readonly about: boolean
  /** She was asked whether a vast volume is right. */
  readonly vastIsRight: boolean
  readonly lightsOut: string
  readonly lamp: LampClock
  readonly zone: string
  readonly mark: string
  readonly form: 'none' | 'rectangle' | 'cylinder'
  readonly length: string
  readonly width: string
  readonly diameter: string
  readonly waterline: string
  /** Per cent. */
  readonly solids: string
  readonly sump: string
  readonly measured: string
  readonly doseBy: 'stated' | 'true'
}
export type TankField = Exclude<keyof TankFields, 'about' | 'vastIsRight' | 'doseBy' | 'form' | 'lamp'>
export type FieldRefusal<Field> = { readonly field: Field; readonly refusal: AnyRefusal }

/** What a tank is called that was given no name. */
export const usualName = 'Tank'

export const newTankFields = (zone: Zone, name = usualName): TankFields => ({
  name,
  volume: '',
  unit: undefined,
  about: true,
  vastIsRight: false,
  lightsOut: '21:00',
  lamp: 'followsClocks',
  zone,
  mark: '0.05',
  form: 'none',
  length: '',
  width: '',
  diameter: '',
  waterline: '',
  solids: '10',
  sump: '',
  measured: '',
  doseBy: 'stated',
})

const text = (value: number | undefined): string => (value === undefined ? '' : asTyped(value))
/** The form has one unit for all its water; an amount noted in another is said in that one. */
const inUnit = (water: WaterAmount | undefined, unit: WaterUnit): string =>
  text(water && (water.unit === unit ? water.value : waterReadings(water)[unit]))

export const fieldsOf = ({
  name,
  water,
  lightsOut,
  lamp = 'followsClocks',
  zone,
  pipetteMark,
}: TankDescribed): TankFields => {
  const shape = water.inside?.shape
  const unit = (water.stated ?? water.measured ?? water.inside?.sump)?.unit
  return {
    ...newTankFields(zone),
    name,
    volume: text(water.stated?.value),
    unit,
    about: water.about,
    vastIsRight: true,
    lightsOut,
    lamp,
    mark: typedMillilitres(pipetteMark),
    form: shape?.form ?? 'none',
    length: shape?.form === 'rectangle' ? text(shape.length) : '',
    width: shape?.form === 'rectangle' ? text(shape.width) : '',
    diameter: shape?.form === 'cylinder' ? text(shape.diameter) : '',
    waterline: text(shape?.waterline),
    solids: text(water.inside ? Math.round(water.inside.solids * 1000) / 10 : 10),
    sump: inUnit(water.inside?.sump, unit ?? 'L'),
    measured: inUnit(water.measured, unit ?? 'L'),
    doseBy: water.doseBy,
  }
}

type Read<Value> = Result<Value, FieldRefusal<TankField>>
const at = <Value>(field: TankField, read: Result<Value, AnyRefusal>): Read<Value> =>
  read.ok ? read : refuse({ field, refusal: read.refusal })

const centimetres = (field: TankField, typed: string): Read<number> => {
  const read = readNumber(typed)
  if (!read.ok) return refuse({ field, refusal: read.refusal })
  if (read.value > mostCentimetres) return refuse({ field, refusal: { why: 'beyondAnyTank' } })
  return read.value > 0 ? ok(read.value) : refuse({ field, refusal: { why: 'notPositive', typed } })
}

/** Sump and measured fill are in the unit of the volume she gave, litres without one. */
const optionalWater = (field: TankField, typed: string, unit: WaterUnit): Read<WaterAmount | undefined> =>
  typed.trim() === '' ? ok(undefined) : at(field, readWater(typed, unit, true))

const inside = (fields: TankFields, unit: WaterUnit): Read<InsideMeasures | undefined> => {
  if (fields.form === 'none') return ok(undefined)
  const waterline = centimetres('waterline', fields.waterline)
  if (!waterline.ok) return waterline
  const share = readNumber(fields.solids)
  if (!share.ok) return refuse({ field: 'solids', refusal: share.refusal })
  if (share.value < 0 || share.value > 60) return refuse({ field: 'solids', refusal: { why: 'dryTank' } })
  const sump = optionalWater('sump', fields.sump, unit)
  if (!sump.ok) return sump
  const rest = { solids: share.value / 100, ...(sump.value ? { sump: sump.value } : {}) }
  if (fields.form === 'cylinder') {
    const diameter = centimetres('diameter', fields.diameter)
    if (!diameter.ok) return diameter
    return ok({ shape: { form: 'cylinder', diameter: diameter.value, waterline: waterline.value }, ...rest })
  }
  const length = centimetres('length', fields.length)
  if (!length.ok) return length
  const width = centimetres('width', fields.width)
  if (!width.ok) return width
  return ok({
    shape: { form: 'rectangle', length: length.value, width: width.value, waterline: waterline.value },
    ...rest,
  })
}

/** The water alone, or the first field of it that does not do. */
export const readTankWater = (fields: TankFields): Read<TankWater> => {
  const unit = fields.unit ?? 'L'
  const measured = optionalWater('measured', fields.measured, unit)
  if (!measured.ok) return measured
  const measures = inside(fields, unit)
  if (!measures.ok) return measures
  const knownOtherwise = measured.value !== undefined || measures.value !== undefined
  const stated: Read<WaterAmount | undefined> =
    fields.volume.trim() === '' && knownOtherwise
      ? ok(undefined)
      : at('volume', readWater(fields.volume, fields.unit, fields.vastIsRight))
  if (!stated.ok)
    return stated.refusal.refusal.why === 'unitUnknown' ? refuse({ ...stated.refusal, field: 'unit' }) : stated
  return ok({
    ...(stated.value ? { stated: stated.value } : {}),
    about: fields.about,
    ...(measured.value ? { measured: measured.value } : {}),
    ...(measures.value ? { inside: measures.value } : {}),
    doseBy: fields.doseBy,
  })
}

const fieldOf: Record<TankRefusal['why'], TankField> = {
  noWater: 'volume',
  dryTank: 'waterline',
  zoneUnknown: 'zone',
  lightsOutMissing: 'lightsOut',
  markNotPositive: 'mark',
}

/** The whole form, or the first field that does not do. */
export const readTank = (tank: TankId, fields: TankFields, now: Moment): Read<readonly [TankDescribed]> => {
  const water = readTankWater(fields)
  if (!water.ok) return water
  const mark = at('mark', readMillilitres(fields.mark))
  if (!mark.ok) return mark
  const { zone, lightsOut, lamp } = fields
  const name = fields.name.trim() || usualName
  // A lamp that follows the clocks goes without saying.
  const clock = lamp === 'followsClocks' ? {} : { lamp }
  const asked = { tank, name, water: water.value, zone, lightsOut, ...clock, pipetteMark: mark.value }
  const described = describeTank(asked, now)
  return described.ok ? described : refuse({ field: fieldOf[described.refusal.why], refusal: described.refusal })
}
