/** Several devices of one sort: their keys stay theirs, their names are told, each is switched off and on. Our own examples. */
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  describeEquipment,
  deviceSorts,
  type EquipmentDescribed,
  nextDeviceKey,
  readStep,
  stepsOf,
  whichOf,
  whichOn,
} from '../../../core/index.ts'
import { at, given, refusalOf } from '../../support/given.ts'
import { lab, longGallery, moveIn } from '../../support/givenLab.ts'
import { equipmentOf } from '../../support/givenSeeding.ts'

const devices: EquipmentDescribed['devices'] = [
  { key: 'return', device: 'return', name: 'left', stops: true },
  { key: 'return-2', device: 'return', stops: true },
  { key: 'wave', device: 'wave', stops: true },
  { key: 'wave-3', device: 'wave', stops: false },
  { key: 'skimmer', device: 'skimmer', stops: true },
]
const described: EquipmentDescribed = { ...equipmentOf([]), devices }

describe('what tells them apart', () => {
  test('is a name, a number where there are several, and nothing where there is one', () => {
    expect(whichOf(devices, 'return')).toEqual({ name: 'left' })
    expect(whichOf(devices, 'return-2')).toEqual({ nth: 2 })
    expect(whichOf(devices, 'wave')).toEqual({ nth: 1 })
    expect(whichOf(devices, 'wave-3')).toEqual({ nth: 3 })
    expect(whichOf(devices, 'skimmer')).toEqual({})
    expect(whichOf(devices, 'uv')).toBeUndefined()
  })

  test('is what the description that named it last says, though it is gone by now', () => {
    const book = given(lab, described)
    book.note({
      ...described,
      at: at('2027-06-15 18:00'),
      devices: [{ key: 'return-2', device: 'return', name: 'over the overflow', stops: true }],
    })
    const which = whichOn(book.world(), longGallery)
    expect(which('return')).toEqual({ name: 'left' })
    expect(which('return-2')).toEqual({ name: 'over the overflow' })
    expect(which('moon')).toBeUndefined()
  })
})

describe('the key of one more', () => {
  test('is the sort for the first, then a number above every one there was', () => {
    expect(nextDeviceKey([], 'wave')).toBe('wave')
    expect(nextDeviceKey(['wave', 'return'], 'wave')).toBe('wave-2')
    expect(nextDeviceKey(['wave', 'wave-4'], 'wave')).toBe('wave-5')
    expect(nextDeviceKey(['wave-2'], 'wave')).toBe('wave-3')
  })

  test('is never one that was, and is read back from its steps', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...deviceSorts), { maxLength: 20 }), (sorts) => {
        const keys: string[] = []
        for (const sort of sorts) keys.push(nextDeviceKey(keys, sort))
        expect(new Set(keys).size).toBe(keys.length)
        for (const key of keys) expect(readStep(`${key}-off`)).toEqual({ does: 'off', key })
      }),
    )
  })
})

test('each of a sort stops for itself: one step off and one on for those that do, none for the rest', () => {
  const steps = stepsOf(described, {
    pours: [{ into: 'display', bottles: 1 }],
    waterOut: 'after',
    off: at('2027-06-15 21:40'),
    morning: at('2027-06-16 07:30'),
  }).map(({ step }) => step)
  expect(steps.filter((step) => /^(return|wave)/.test(step))).toEqual([
    'return-off',
    'return-2-off',
    'wave-off',
    'return-on',
    'return-2-on',
    'wave-on',
  ])
})

test('two devices of one key are refused, and a name that is only spaces is none', () => {
  const book = given(lab)
  const ask = (all: EquipmentDescribed['devices']) =>
    describeEquipment(book.world(), { tank: longGallery, devices: all, places: described.places }, moveIn)
  const one = { key: 'return', device: 'return' as const, stops: true }
  expect(refusalOf(ask([one, { ...one, name: 'left' }]))).toEqual({ why: 'sameKey', key: 'return' })
  book.does(() =>
    ask([
      { ...one, name: '  ' },
      { ...one, key: 'return-2', name: ' left ' },
    ]),
  )
  expect(book.world().equipment.get(longGallery)?.[0]?.devices).toEqual([
    one,
    { ...one, key: 'return-2', name: 'left' },
  ])
})
