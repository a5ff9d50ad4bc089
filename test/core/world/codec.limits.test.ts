import { expect, test } from 'vitest'
import { decodeEntry } from '../../../core/index.ts'
import { stamp } from '../../fixtures/notes.ts'
import { replaced } from '../../fixtures/paths.ts'

const id = stamp('001767225600000-000-kitchen')
const at = 1_767_225_600_000

const tank = {
  kind: 'tankDescribed',
  at,
  tank: 'tank1',
  name: 'Reef',
  water: { stated: { value: 40, unit: 'usGal' }, about: true, doseBy: 'stated' },
  zone: 'Europe/London',
  lightsOut: '22:00',
  pipetteMark: 100,
}
const measured = {
  ...tank,
  water: {
    ...tank.water,
    exact: {
      shape: { form: 'bowFront', length: 120, width: 45, bow: 10 },
      measures: { taken: 'outside', height: 50, glass: 10, base: 12, down: 0 },
      solids: { by: 'sandAndRock', rockKg: 30 },
      refugium: { value: 12, unit: 'L' },
    },
  },
}
const food = {
  kind: 'foodDescribed',
  at,
  food: 'food1',
  name: 'Green',
  sort: 'live',
  band: { low: 250, high: 500, per: { value: 50, unit: 'usGal' } },
  everyNights: 2,
  fridgeLife: { count: 5, unit: 'months' },
  countsFrom: 'arrival',
  residueShare: 0.03,
}

test.each([
  ['no water at all', tank, ['water', 'stated', 'value'], 0],
  ['water in buckets', tank, ['water', 'stated', 'unit'], 'bucket'],
  ['a zone nobody knows', tank, ['zone'], 'Moon/Tycho'],
  ['a bare offset for a zone', tank, ['zone'], '+01:00'],
  ['a time after midnight of no day', tank, ['lightsOut'], '24:00'],
  ['a pipette without steps', tank, ['pipetteMark'], 0],
  ['half a microlitre', tank, ['pipetteMark'], 0.5],
  ['a moment before 1970', tank, ['at'], -1],
  ['a moment in 2200', tank, ['at'], Date.UTC(2200, 0, 1)],
  ['an id of capitals', tank, ['tank'], 'TANK1'],
  ['a bow that does not stand out', measured, ['water', 'exact', 'shape', 'bow'], 0],
  ['water above the rim', measured, ['water', 'exact', 'measures', 'down'], -1],
  ['measurements of nobody knows which side', measured, ['water', 'exact', 'measures', 'taken'], 'somewhere'],
  ['rock of less than nothing', measured, ['water', 'exact', 'solids', 'rockKg'], -0.1],
  ['more left on the walls than a fifth', food, ['residueShare'], 0.21],
  ['a dose every no nights', food, ['everyNights'], 0],
  ['a negative amount', food, ['band', 'low'], -1],
  ['a life of half a month', food, ['fridgeLife', 'count'], 0.5],
] as const)('%s is not read', (_what, fact, path, by) => {
  expect(decodeEntry({ id, fact })).toEqual({ id, fact })
  expect(decodeEntry({ id, fact: replaced(fact, path, by) })).toBeUndefined()
})

test.each(['2026-02-29', '2026-13-01', '1899-12-31', '2026-2-1'])('%s is no day to open a bottle on', (openedOn) => {
  expect(decodeEntry({ id, fact: { kind: 'bottleOpened', at, bottle: 'bottle1', openedOn } })).toBeUndefined()
})

test('a book figure may have fallen below zero, a count may not', () => {
  const counted = { kind: 'portionsCounted', at, lot: 'lot1', counted: 12, book: -3 }
  expect(decodeEntry({ id, fact: counted })).toEqual({ id, fact: counted })
  expect(decodeEntry({ id, fact: { ...counted, counted: -1 } })).toBeUndefined()
})

test('a form only a newer version knows does not cost this one the tank', () => {
  const oval = replaced(measured, ['water', 'exact', 'shape'], { form: 'oval', across: 90, deep: 'half' })
  expect(decodeEntry({ id, fact: oval })).toEqual({ id, fact: oval })
  const noName = replaced(measured, ['water', 'exact', 'shape'], { across: 90 })
  expect(decodeEntry({ id, fact: noName })).toBeUndefined()
})
