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
  expect(refusalOf(read(typed({ mark: far })))).toMatchObject({ field: 'mark', refusal: { why: 'tooMuch' } })
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
