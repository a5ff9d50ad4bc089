import { expect, test } from 'vitest'
import { readNumber, stepsToReach, stepsWithin } from '../../../core/index.ts'

test.each([
  ['60', 60],
  ['60.5', 60.5],
  ['60,5', 60.5],
  ['0.600', 0.6],
  ['0,75', 0.75],
  [',5', 0.5],
  ['.5', 0.5],
  ['7,', 7],
  [' 12 ', 12],
  ['1 200', 1200],
  ['1\u202f200,5', 1200.5],
  ["1'200.25", 1200.25],
  ['1,234.5', 1234.5],
  ['1.234,5', 1234.5],
  ['1,234,567', 1234567],
  ['1.234.567', 1234567],
  ['1.234.567,89', 1234567.89],
  ['1234.567', 1234.567],
  ['12,3456', 12.3456],
  ['-5', -5],
  ['−2,5', -2.5],
  ['-1,234.5', -1234.5],
])('“%s” is read as %d', (typed, value) => {
  expect(readNumber(typed)).toEqual({ ok: true, value })
})

test.each([
  ['1.000', 1, 1000],
  ['1,500', 1.5, 1500],
  ['25.125', 25.125, 25125],
  ['-2,250', -2.25, -2250],
])('“%s” has two readings, and neither is guessed', (typed, point, thousands) => {
  expect(readNumber(typed)).toEqual({ ok: false, refusal: { why: 'twoReadings', typed, readings: [point, thousands] } })
})

test.each(['', '   ', '\u00a0'])('nothing typed is told apart from something wrong', (typed) => {
  expect(readNumber(typed)).toEqual({ ok: false, refusal: { why: 'empty' } })
})

test.each([
  '.',
  ',',
  '-',
  'ten',
  '5 mL',
  '1e3',
  '0x10',
  'NaN',
  'Infinity',
  '1..5',
  '1,2.3,4',
  '1.2.3',
  '1,23,456',
  '1 2',
  '1 20 300',
  '--5',
  '½',
  '9'.repeat(400),
])('“%s” is not a number', (typed) => {
  expect(readNumber(typed)).toEqual({ ok: false, refusal: { why: 'notANumber', typed } })
})

test('0.6 by a pipette of 0.05 is twelve steps, though 0.6 / 0.05 computes as 11.999…', () => {
  expect(0.6 / 0.05).toBeLessThan(12)
  expect(stepsToReach(0.6, 0.05)).toBe(12)
  expect(stepsWithin(0.6, 0.05)).toBe(12)
})

test('0.3 by 0.1 is three steps, though 0.3 / 0.1 computes as 2.999…', () => {
  expect(stepsWithin(0.3, 0.1)).toBe(3)
})

test('a whole number of steps is never one more or one less, whatever the binary fractions', () => {
  let crooked = 0
  for (const hundredths of [1, 2, 5, 10, 20, 25, 50])
    for (let steps = 1; steps <= 2_000; steps += 1) {
      const step = hundredths / 100
      const value = Number(((steps * hundredths) / 100).toFixed(2))
      if (value / step !== steps) crooked += 1
      expect([stepsToReach(value, step), stepsWithin(value, step)], `${value} by ${step}`).toEqual([steps, steps])
    }
  expect(crooked).toBeGreaterThan(100)
})

test('a step that was begun counts when a value must be reached, and not when it must fit', () => {
  expect(stepsToReach(0.61, 0.05)).toBe(13)
  expect(stepsWithin(0.64, 0.05)).toBe(12)
  expect(stepsToReach(1_000.001, 1)).toBe(1_001)
  expect(stepsWithin(999.999, 1)).toBe(999)
})
