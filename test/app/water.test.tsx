/** What is typed of a tank and of a plan, however it is typed, and read back into its form. */
import { expect, test } from 'vitest'
import { readPlan } from '../../app/screens/Water/planFields.ts'
import { fieldsOf, newTankFields, readTank, type TankFields } from '../../app/screens/Water/tankFields.ts'
import { day, type TankDescribed, type TankId } from '../../core/index.ts'
import { at, done, london, refusalOf } from '../support/given.ts'

const now = at('2027-01-06 19:15')
const typed = (fields: Partial<TankFields>) => ({
  ...newTankFields(london),
  volume: '300',
  unit: 'L' as const,
  ...fields,
})
const read = (fields: TankFields) => readTank('cockle' as TankId, fields, now)
const described = (fields: TankFields): TankDescribed => done(read(fields))[0]
const far = '99999999999999999999'

test('a figure that no pipette or bottle has is refused, and the form stays up', () => {
  expect(refusalOf(read(typed({ mark: far })))).toMatchObject([{ field: 'mark', refusal: { why: 'tooMuch' } }])
  const plan = { amount: far, everyNights: '2', firstNight: '2027-01-06', rhythm: 'lastDose' } as const
  expect(refusalOf(readPlan(plan, day('2027-01-06')))).toMatchObject({ field: 'amount', refusal: { why: 'tooMuch' } })
})

test('a fill measured in gallons, where she states no volume, is the same fill when the tank is described again', () => {
  const first = described(typed({ volume: '', unit: 'usGal', measured: '90' }))
  expect(first.water.measured).toEqual({ value: 90, unit: 'usGal' })
  expect(described(fieldsOf(first)).water).toEqual(first.water)
})

test('a fill noted in another unit than the volume keeps its size, not its figure', () => {
  const first = described(typed({ volume: '100', unit: 'usGal' }))
  const water = { ...first.water, measured: { value: 378.5411784, unit: 'L' as const } }
  const again = described(fieldsOf({ ...first, water })).water.measured
  expect(again?.unit).toBe('usGal')
  expect(again?.value).toBeCloseTo(100, 9)
})

test('every measure that does not do is said at once', () => {
  const bow = typed({ form: 'bowFront', length: '80', width: '', bow: '-3', waterline: '1.000', measured: '0' })
  const wrong = refusalOf(read(bow)).map(({ field, refusal: { why } }) => [field, why])
  expect(wrong).toEqual([
    ['measured', 'notPositive'],
    ['width', 'empty'],
    ['bow', 'notPositive'],
    ['waterline', 'twoReadings'],
  ])
})

test('a bow deeper than half the front is refused at its own field', () => {
  const bow = typed({ form: 'bowFront', length: '80', width: '40', bow: '41', waterline: '40' })
  expect(refusalOf(read(bow))).toEqual([{ field: 'bow', refusal: { why: 'bowTooDeep', most: 40 } }])
})

test.each<[string, Partial<TankFields>]>([
  [
    'a bow front, outside, with sand and rock',
    {
      form: 'bowFront',
      taken: 'outside',
      length: '120',
      width: '45',
      bow: '9,5',
      height: '50',
      glass: '12',
      base: '15',
      down: '0',
      solidsBy: 'sandAndRock',
      sand: '4',
      rock: '32.5',
      sump: '40',
      refugium: '18',
    },
  ],
  ['six sides, inside, a share', { form: 'hexagon', side: '38', waterline: '52.4', solids: '12.5', refugium: '9' }],
  ['a cylinder as an older version notes it', { form: 'cylinder', diameter: '50', waterline: '60', sump: '12' }],
])('%s is the same tank when it is described again', (_what, fields) => {
  const first = described(typed(fields))
  expect(described(fieldsOf(first)).water).toEqual(first.water)
})

test('sand, rock, sump and refugium of 0 are none; water at the brim is an answer', () => {
  const none = { sand: '0', rock: '', sump: '0', refugium: '0' }
  const brim = { taken: 'outside', height: '50', glass: '10', base: '12', down: '0' } as const
  const { exact } = described(
    typed({ form: 'rectangle', length: '120', width: '50', ...brim, solidsBy: 'sandAndRock', ...none }),
  ).water
  expect(exact).toEqual({
    shape: { form: 'rectangle', length: 120, width: 50 },
    measures: { taken: 'outside', height: 50, glass: 10, base: 12, down: 0 },
    solids: { by: 'sandAndRock' },
  })
})

test('a vast fill and vast measurements are asked about, and taken with a confirmation', () => {
  const why = { field: 'measures', refusal: { why: 'vast', litres: 20_000 } }
  const fill = typed({ measured: '20000' })
  expect(refusalOf(read(fill))).toEqual([why])
  expect(described({ ...fill, vastMeasuresAreRight: true }).water.measured).toEqual({ value: 20_000, unit: 'L' })
  const inMillimetres = typed({ form: 'rectangle', length: '1200', width: '500', waterline: '450', solids: '0' })
  expect(refusalOf(read(inMillimetres))).toMatchObject([{ field: 'measures', refusal: { why: 'vast' } }])
})
