/**
 * A household's ledger of any length, the same one every time: three tanks fed nightly from the freezer and the fridge,
 * with the counts, slips and forgotten nights of real life. It ends with the night before a given day.
 */
import { addDays, type Day, type Entry, type Fact, momentAt, type PlanId } from '../../core/index.ts'
import { london } from '../support/given.ts'
import { cockle, doors, foodOf, limpetShelf, longGallery, mL, tankOf, usGal } from '../support/givenLab.ts'
import { type Dice, diceFrom } from './dice.ts'
import { amber, green, type Larder, newLarder } from './larder.ts'
import { newPen, type Pen } from './pen.ts'

const tanks = [
  { tank: longGallery, plan: 'galleryplan' as PlanId, food: green, gallons: 350, amount: mL(2) },
  { tank: cockle, plan: 'cockleplan' as PlanId, food: green, gallons: 180, amount: mL(1) },
  { tank: limpetShelf, plan: 'limpetplan' as PlanId, food: amber, gallons: 260, amount: mL(1.5) },
] as const

/** Everything that stands before the first night. */
const movedIn = (firstNight: Day): readonly Fact[] => {
  const at = momentAt(firstNight, 360, london)
  return [
    ...tanks.flatMap(({ tank, gallons }) => tankOf(tank, usGal(gallons))),
    ...foodOf(green),
    ...foodOf(amber, { shakeHours: 12, fridgeLife: { count: 2, unit: 'months' } }),
    ...doors,
    ...tanks.map(
      ({ tank, plan, food, amount }): Fact => ({
        ...{ kind: 'planMade', at, plan, tank, food, amount, everyNights: 1, firstNight },
      }),
    ),
  ].map((fact) => ({ ...fact, at }))
}

const evening = (night: Day, larder: Larder, pen: Pen, dice: Dice) => {
  for (const [index, { tank, plan, food, amount }] of tanks.entries()) {
    const at = momentAt(night, 1_265 + index * 2 + dice.between(0, 1), london)
    if (dice.percent(3)) {
      const kind = dice.percent(75) ? 'nightSkipped' : 'nightUnknown'
      pen.write({ kind, at, tank, food, plan, night, ...(kind === 'nightSkipped' ? { why: 'away' } : {}) })
      continue
    }
    if (food === green && dice.percent(2)) larder.drop(night)
    const taken = food === green ? larder.portions(amount / mL(1)) : larder.poured(amount)
    const dose: Fact = { kind: 'doseGiven', at, food, served: [{ tank, plan, night, amount }], taken }
    // Touched twice by a wet thumb: the first of the two is crossed out.
    if (dice.percent(1)) pen.write({ kind: 'entryStruckOut', at, target: pen.write(dose), why: 'mistake' })
    pen.write(dose)
  }
}

/** Day after day from the first, for as long as `wanted` says so. */
const live = (first: Day, wanted: (written: number) => boolean) => {
  const dice = diceFrom(20_270)
  const pen = newPen(dice)
  const larder = newLarder(pen, dice)
  for (const fact of movedIn(first)) pen.write(fact)
  let nights = 0
  for (; wanted(pen.written.length); nights += 1) {
    const night = addDays(first, nights)
    larder.day(night)
    evening(night, larder, pen, dice)
  }
  return { nights, entries: pen.written }
}

/**
 * Exactly so many entries, the last of them in the night before `tonight`. Lived through twice: once to learn how many
 * nights that takes, once with the right first night. What is over are shakes of the first mornings, and nobody misses them.
 */
export const household = (many: number, tonight: Day): readonly Entry<Fact>[] => {
  const fits = (written: number) => written < many
  const { nights } = live(addDays(tonight, -Math.ceil(many / 5)), fits)
  const { entries } = live(addDays(tonight, -nights), fits)
  let over = entries.length - many
  return entries.filter(({ fact }) => fact.kind !== 'bottlesShaken' || over-- <= 0)
}
