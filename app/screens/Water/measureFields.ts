/** The measurements of a tank: what is typed, and what the core makes of it. */
import {
  checkMeasures,
  type ExactRefusal,
  type ExactWater,
  type MeasuresTaken,
  measuresOf,
  ok,
  readNumber,
  refuse,
  type Solids,
  type TankShape,
  type TankWater,
  type WaterAmount,
  type WaterUnit,
  waterReadings,
} from '../../../core/index.ts'
import { asTyped } from '../../words/numbers.ts'
import { all, at, measure, measureIfAny, measureOr0, type Read, waterIfAny, wrong } from './readFields.ts'
import type { TankField } from './tankFields.ts'

const typedMeasures = {
  length: '',
  width: '',
  bow: '',
  side: '',
  diameter: '',
  waterline: '',
  height: '',
  glass: '',
  base: '',
  down: '',
  /** Per cent. */
  solids: '10',
  sand: '',
  rock: '',
  sump: '',
  refugium: '',
}
export type TypedMeasure = keyof typeof typedMeasures
export type MeasureFields = { readonly [Field in TypedMeasure]: string } & {
  readonly form: 'none' | TankShape['form']
  readonly taken: MeasuresTaken['taken']
  readonly solidsBy: Solids['by']
}
export const newMeasureFields: MeasureFields = { ...typedMeasures, form: 'none', taken: 'inside', solidsBy: 'share' }

export const text = (value: number | undefined): string => (value === undefined ? '' : asTyped(value))
/** The form has one unit for all its water; an amount noted in another is said in that one. */
export const inUnit = (water: WaterAmount | undefined, unit: WaterUnit): string =>
  text(water && (water.unit === unit ? water.value : waterReadings(water)[unit]))

const texts = (values: object): Partial<MeasureFields> =>
  Object.fromEntries(
    Object.entries(values).map(([key, value]) => [key, typeof value === 'number' ? text(value) : value]),
  )

export const measureFieldsOf = (water: TankWater, unit: WaterUnit): MeasureFields => {
  const exact = measuresOf(water)
  // A form of a newer version is not among those offered here.
  if (!exact || !(exact.shape.form in shapes)) return newMeasureFields
  const { solids } = exact
  return {
    ...newMeasureFields,
    ...texts(exact.shape),
    ...texts(exact.measures),
    solidsBy: solids.by,
    ...(solids.by === 'share'
      ? { solids: text(Math.round(solids.share * 1000) / 10) }
      : { sand: text(solids.sandDepth), rock: text(solids.rockKg) }),
    sump: inUnit(exact.sump, unit),
    refugium: inUnit(exact.refugium, unit),
  }
}

const shapes: { readonly [Form in TankShape['form']]: (fields: MeasureFields) => Read<TankShape> } = {
  rectangle: ({ length, width }) =>
    all({ form: ok('rectangle' as const), length: measure('length', length), width: measure('width', width) }),
  cylinder: ({ diameter }) => all({ form: ok('cylinder' as const), diameter: measure('diameter', diameter) }),
  hexagon: ({ side }) => all({ form: ok('hexagon' as const), side: measure('side', side) }),
  bowFront: ({ length, width, bow }) =>
    all({
      form: ok('bowFront' as const),
      length: measure('length', length),
      width: measure('width', width),
      bow: measure('bow', bow),
    }),
}

const measures = ({ taken, waterline, height, glass, base, down }: MeasureFields): Read<MeasuresTaken> =>
  taken === 'inside'
    ? all({ taken: ok(taken), waterline: measure('waterline', waterline) })
    : all({
        taken: ok(taken),
        height: measure('height', height),
        glass: measure('glass', glass),
        base: measure('base', base),
        down: measureOr0('down', down),
      })

const share = (typed: string): Read<number> => {
  const read = at('solids', readNumber(typed))
  if (!read.ok) return read
  return read.value < 0 || read.value > 60 ? wrong('solids', { why: 'dryTank' }) : ok(read.value / 100)
}
const solids = (fields: MeasureFields): Read<Solids> => {
  if (fields.solidsBy === 'share') return all({ by: ok('share' as const), share: share(fields.solids) })
  const read = all({ sandDepth: measureIfAny('sand', fields.sand), rockKg: measureIfAny('rock', fields.rock) })
  return read.ok ? ok({ by: 'sandAndRock', ...known(read.value) }) : read
}

/** What was left empty is left out. */
const known = <Values extends object>(values: Values) =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    readonly [Key in keyof Values]?: Exclude<Values[Key], undefined>
  }

const fieldOf: Record<ExactRefusal['why'], TankField> = {
  bowTooDeep: 'bow',
  glassTooThick: 'glass',
  noHeight: 'down',
  sandTooDeep: 'sand',
  allRock: 'rock',
}

/** Undefined: she left them out. Sump and refugium are in the unit of the volume she gave. */
export const readMeasures = (fields: MeasureFields, unit: WaterUnit): Read<ExactWater | undefined> => {
  if (fields.form === 'none') return ok(undefined)
  const read = all({
    shape: shapes[fields.form](fields),
    measures: measures(fields),
    solids: solids(fields),
    sump: waterIfAny('sump', fields.sump, unit),
    refugium: waterIfAny('refugium', fields.refugium, unit),
  })
  if (!read.ok) return read
  const { sump, refugium, ...display } = read.value
  const checked = checkMeasures({ ...display, ...known({ sump, refugium }) })
  return checked.ok ? checked : refuse(checked.refusal.map((refusal) => ({ field: fieldOf[refusal.why], refusal })))
}
