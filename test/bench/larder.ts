/** The made-up household's fridge and freezer: a bottle is bought when one runs out, frozen into portions or kept and poured. */
import {
  addDays,
  type BottleId,
  type Day,
  type FoodId,
  type LotId,
  type Microlitres,
  microlitres,
  momentAt,
  type Taken,
} from '../../core/index.ts'
import { london } from '../support/given.ts'
import { kitchenFreezer, kitchenFridge, mL } from '../support/givenLab.ts'
import type { Dice } from './dice.ts'
import type { Pen } from './pen.ts'

export const green = 'greenfood' as FoodId
export const amber = 'amberfood' as FoodId

type Lot = { readonly id: LotId; left: number }
type Bottle = { readonly id: BottleId; left: number; readonly until: Day }
export type Larder = {
  /** What a keeper does by day: buys, freezes, shakes, counts, measures. */
  readonly day: (day: Day) => void
  /** So many portions of a millilitre, from the oldest lot. */
  readonly portions: (count: number) => readonly Taken[]
  readonly poured: (amount: Microlitres) => readonly Taken[]
  /** One portion dropped on the floor. */
  readonly drop: (day: Day) => void
}

const millilitre = mL(1)
/** A new freezing is made before the last portions are gone. */
const fewPortions = 12
const bottleDays = 42

export const newLarder = (pen: Pen, dice: Dice): Larder => {
  const lots: Lot[] = []
  let pouring: Bottle | undefined
  let bought = 0

  const freeze = (day: Day) => {
    bought += 1
    const [bottle, lot] = [`green${bought}` as BottleId, `heap${bought}` as LotId]
    const at = (minutes: number) => momentAt(day, minutes, london)
    const contents = mL(240)
    const size = { value: 240, unit: 'mL' } as const
    pen.write({
      ...{ kind: 'bottleRecorded', at: at(690), bottle, food: green, size, contents, about: false },
      ...{ receivedOn: day, openedOn: day, price: { minor: 1895 + bought, currency: 'GBP' }, place: kitchenFridge },
    })
    const portions = dice.between(190, 210)
    const kept = {
      as: 'trays',
      trays: [96, portions - 96].map((filled) => ({ rows: 8, columns: 15, filled })),
    } as const
    pen.write({
      ...{ kind: 'portionsFrozen', at: at(735), lot, food: green, mark: `bag ${bought}`, portions, each: millilitre },
      ...{ frozenOn: day, kept, place: kitchenFreezer, bottle, taken: mL(portions + 4), late: false },
    })
    pen.write({ kind: 'bottleFinished', at: at(740), bottle })
    lots.push({ id: lot, left: portions })
  }

  const openBottle = (day: Day) => {
    if (pouring) pen.write({ kind: 'bottleFinished', at: momentAt(day, 620, london), bottle: pouring.id })
    bought += 1
    const bottle = `amber${bought}` as BottleId
    pen.write({
      ...{
        kind: 'bottleRecorded',
        at: momentAt(day, 640, london),
        bottle,
        food: amber,
        contents: mL(120),
        about: true,
      },
      ...{ size: { value: 120, unit: 'mL' }, receivedOn: addDays(day, -3), openedOn: day, place: kitchenFridge },
    })
    pouring = { id: bottle, left: mL(120), until: addDays(day, bottleDays) }
  }

  const shake = (day: Day, minutes: number) => {
    if (pouring) pen.write({ kind: 'bottlesShaken', at: momentAt(day, minutes, london), bottles: [pouring.id] })
  }
  const count = (day: Day) => {
    const [lot] = lots
    if (!lot) return
    const counted = Math.max(0, lot.left - (dice.percent(30) ? 1 : 0))
    pen.write({ kind: 'portionsCounted', at: momentAt(day, 760, london), lot: lot.id, counted, book: lot.left })
    lot.left = counted
  }
  const measure = (day: Day) => {
    if (!pouring) return
    const book = microlitres(pouring.left)
    const left = microlitres(Math.max(0, book - dice.between(0, 2) * 500))
    pen.write({ kind: 'liquidMeasured', at: momentAt(day, 770, london), bottle: pouring.id, left, book })
    pouring.left = left
  }
  const portions = (wanted: number): readonly Taken[] => {
    const taken: Taken[] = []
    for (let missing = wanted; missing > 0; ) {
      const [lot] = lots
      if (!lot) break
      const count = Math.min(lot.left, missing)
      if (count > 0) taken.push({ from: 'portions', lot: lot.id, count })
      lot.left -= count
      missing -= count
      if (lot.left === 0) lots.shift()
    }
    return taken
  }

  return {
    day: (day) => {
      if (lots.reduce((sum, { left }) => sum + left, 0) < fewPortions) freeze(day)
      if (!pouring || day >= pouring.until) openBottle(day)
      shake(day, 450)
      if (dice.percent(85)) shake(day, 1_170)
      if (dice.percent(12)) count(day)
      if (dice.percent(6)) measure(day)
    },
    portions,
    poured: (amount) => {
      if (!pouring) return []
      pouring.left -= amount
      return [{ from: 'bottle', bottle: pouring.id, amount }]
    },
    drop: (day) => {
      const [lost] = portions(1)
      if (lost?.from !== 'portions') return
      const fact = { kind: 'portionsGone', at: momentAt(day, 1_262, london), lot: lost.lot, count: 1 } as const
      pen.write({ ...fact, fate: 'lost', why: 'dropped' })
    },
  }
}
