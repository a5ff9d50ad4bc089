/** What the core makes of a food's form. */
import {
  describeFood,
  type FoodAsked,
  ok,
  type Result,
  readMillilitres,
  readNumber,
  type Span,
} from '../../../core/index.ts'
import type { KindFields } from './kindFields.ts'
import { readContents } from './readContents.ts'
import { readName } from './readName.ts'
import { type FormAsk, placed, type Trouble, trouble } from './useAct.ts'

type NumberField = 'per' | 'everyNights' | 'life' | 'freezerLife' | 'shakeHours' | 'residue'
type Numbers = Readonly<Record<NumberField, number>>

/** Beyond any figure on a label. */
const largest = 1_000_000

/** Those that are asked, in the order they stand on the page; the others are not looked at. */
const readNumbers = (fields: KindFields): Result<Partial<Numbers>, Trouble> => {
  const asked: readonly NumberField[] = [
    'per',
    'everyNights',
    'life',
    ...(mayFreeze(fields) ? (['freezerLife'] as const) : []),
    ...(fields.shakes === 'yes' ? (['shakeHours'] as const) : []),
    'residue',
  ]
  const read: Partial<Record<NumberField, number>> = {}
  for (const at of asked) {
    const number = placed(readNumber(fields[at]), at)
    if (!number.ok) return number
    if (number.value > largest) return trouble(at, { why: 'tooMany' })
    read[at] = number.value
  }
  return ok(read)
}

export const mayFreeze = ({ sort, freezes }: KindFields): boolean => sort === 'freshNonViable' && freezes === 'yes'

const readBand = (fields: KindFields, per: number): Result<FoodAsked['band'], Trouble> => {
  const low = placed(readMillilitres(fields.low), 'low')
  if (!low.ok) return low
  const high = placed(readMillilitres(fields.high), 'high')
  if (!high.ok) return high
  return ok({ low: low.value, high: high.value, per: { value: per, unit: fields.perUnit } })
}

const places = {
  bandUpsideDown: 'high',
  bandEmpty: 'per',
  nightsOutOfRange: 'everyNights',
  shakeOutOfRange: 'shakeHours',
  residueOutOfRange: 'residue',
} as const

export const logKind =
  (fields: KindFields): FormAsk =>
  (_, { now }) => {
    const name = readName(fields.name, 'name')
    if (!name.ok) return name
    const numbers = readNumbers(fields)
    if (!numbers.ok) return numbers
    const { per = 0, everyNights = 0, life = 0, freezerLife, shakeHours, residue = 0 } = numbers.value
    const band = readBand(fields, per)
    if (!band.ok) return band
    const contents = readContents(fields)
    if (!contents.ok) return contents
    const frozen: Span | undefined =
      freezerLife === undefined ? undefined : { count: freezerLife, unit: fields.freezerUnit }
    const described = describeFood(
      {
        food: fields.food,
        name: name.value,
        sort: fields.sort,
        band: band.value,
        everyNights,
        fridgeLife: { count: life, unit: fields.lifeUnit },
        countsFrom: fields.countsFrom,
        residueShare: residue / 100,
        ...(frozen ? { freezerLife: frozen } : {}),
        ...(shakeHours === undefined ? {} : { shakeHours }),
        ...(contents.value ? { contents: contents.value } : {}),
      },
      now,
    )
    if (described.ok) return described
    const { refusal } = described
    if (refusal.why === 'lifeOutOfRange') return trouble(refusal.which === 'fridge' ? 'life' : 'freezerLife', refusal)
    return placed(described, places)
  }
