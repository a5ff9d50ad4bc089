/** Households in the states a screen can meet, told through the requests a person would use. */
import {
  type Day,
  day,
  describePlace,
  doNotKnow,
  type Entry,
  type Fact,
  fillTrays,
  giveDose,
  type Held,
  type PlanId,
  planFreezing,
  portionsGone,
  recordFreezing,
  skipNight,
  strikeOut,
} from '../../core/index.ts'
import { at, type Book, bookOf, done, given, kitchenPhone, london } from '../support/given.ts'
import {
  amberFood,
  blueClip,
  bottleOf,
  cockle,
  doors,
  dose,
  firstBottle,
  foodOf,
  greenFood,
  greenPlan,
  kitchenFreezer,
  kitchenFridge,
  longGallery,
  mL,
  moveIn,
  onHand,
  planOf,
  tankOf,
  usGal,
} from '../support/givenLab.ts'
import { householdsDiary } from './householdsDiary.ts'
import { householdsLamps } from './householdsLamps.ts'
import { householdsLasts } from './householdsLasts.ts'
import { householdsLife } from './householdsLife.ts'
import { householdsMoney } from './householdsMoney.ts'
import { householdsMoved } from './householdsMoved.ts'
import { householdsOrder } from './householdsOrder.ts'
import { householdsPaper } from './householdsPaper.ts'
import { householdsSeeding } from './householdsSeeding.ts'
import { householdsTonight } from './householdsTonight.ts'
import { householdsTrouble } from './householdsTrouble.ts'
import { householdsVolumes } from './householdsVolumes.ts'
import { householdsWorth } from './householdsWorth.ts'

const lab: readonly Fact[] = [
  ...tankOf(longGallery, usGal(200), { name: 'Long Gallery' }),
  ...foodOf(greenFood, { name: 'Green food' }),
  ...doors,
  ...describePlace({ place: kitchenFridge, name: 'kitchen fridge', door: 'fridge' }, moveIn),
  ...describePlace({ place: kitchenFreezer, name: 'kitchen freezer', door: 'freezer' }, moveIn),
]
const plan = planOf({ first: '2026-09-04', amount: 1 })
const bottle = bottleOf({ holds: 120, received: '2026-11-02', opened: '2026-11-02' })

/** Seven trays of fifteen, begun on 4 September. */
const trays = onHand({
  portions: 105,
  each: 1,
  frozen: '2026-09-04',
  kept: { as: 'trays', trays: fillTrays(105, 3, 5) },
})

/** Every other night from 4 September, `until` that night, 21:20. */
const nights = (until: Day): readonly string[] => {
  const all: string[] = []
  for (
    let night = new Date('2026-09-04T12:00Z');
    night.toISOString().slice(0, 10) <= until;
    night.setUTCDate(night.getUTCDate() + 2)
  )
    all.push(night.toISOString().slice(0, 10))
  return all
}
const fed = (book: Book, until: string): Book => {
  for (const night of nights(day(until))) book.does(dose(at(`${night} 21:20`)))
  return book
}

const twoTanks = (): Book => {
  const book = given(
    lab,
    tankOf(cockle, usGal(60), { name: 'Cockle' }),
    foodOf(amberFood, { name: 'Amber food' }),
    trays,
    plan,
    planOf({ first: '2026-11-25', amount: 0.5, tank: cockle, plan: 'cockleplan' as PlanId }),
  )
  return fed(book, '2026-11-23')
}

const loggedTwice = (): readonly Entry<Fact>[] => {
  const ours = fed(given(lab, trays, plan), '2026-11-23')
  const theirs = bookOf(kitchenPhone, ours.entries())
  ours.does(dose(at('2026-11-25 20:11')))
  theirs.does(dose(at('2026-11-25 20:14')))
  return [...new Map([...ours.entries(), ...theirs.entries()].map((entry) => [entry.id, entry])).values()]
}

const emptierThanBook = (): Book => {
  const book = given(lab, onHand({ portions: 2, each: 1, frozen: '2026-09-04' }), plan)
  book.does((world) =>
    portionsGone(world, { lot: blueClip, count: 2, fate: 'lost', why: 'dropped' }, at('2026-09-05 19:00')),
  )
  const taken = [{ from: 'portions', lot: blueClip, count: 1 }] as const
  book.does((world) =>
    giveDose(world, { plan: greenPlan, taken, amount: mL(1), at: at('2026-11-23 21:20') }, at('2026-11-23 21:20')),
  )
  return book
}

const frozen = (): Book => {
  const book = given(lab, bottle, plan)
  const made = done(
    planFreezing({
      inBottle: mL(120),
      residue: mL(3.6),
      keepFresh: mL(14),
      portion: mL(1),
      well: mL(1.2),
      wellsPerTray: 24,
    }),
  )
  const here = { now: at('2026-11-20 18:00'), zone: london }
  book.does((world) =>
    recordFreezing(
      world,
      {
        bottle: firstBottle,
        lot: blueClip,
        mark: 'tray bag 1',
        portions: made.portions,
        each: mL(1),
        frozenOn: day('2026-11-20'),
        kept: { as: 'trays', trays: fillTrays(made.portions, 4, 6) },
        place: kitchenFreezer,
      },
      here,
    ),
  )
  return book
}

const crossedOut = (): Book => {
  const book = fed(given(lab, trays, plan), '2026-11-23')
  const [wrong] = book.does(dose(at('2026-11-24 21:20')))
  if (wrong) book.does((world) => strikeOut(world, { target: wrong, why: 'didNotHappen' }, at('2026-11-24 21:25')))
  return book
}

const long = 'The long gallery by the north window, behind the seal pool, '.repeat(5)
const longNames = (): Book =>
  given(
    tankOf(longGallery, usGal(200), { name: long }),
    foodOf(greenFood, { name: `Green food ${long}` }),
    ...describePlace({ place: kitchenFreezer, name: `Freezer ${long}`, door: 'freezer' }, moveIn),
    trays,
    plan,
  )

const evening = (what: 'skipped' | 'unknown' | 'done'): Book => {
  const book = fed(given(lab, trays, plan), '2026-11-23')
  const now = at('2026-11-25 20:20')
  if (what === 'done') book.does(dose(now))
  else book.does((world) => (what === 'skipped' ? skipNight : doNotKnow)(world, { plan: greenPlan }, now))
  return book
}

/** Each is what a phone could hold. */
export const households = {
  empty: () => [],
  tankOnly: () => given(tankOf(longGallery, usGal(200), { name: 'Long Gallery' })).entries(),
  noPlan: () => given(lab, bottle).entries(),
  bottle: () => given(lab, bottle, planOf({ first: '2026-11-25', amount: 1 })).entries(),
  frozen: () => frozen().entries(),
  trays: () => fed(given(lab, trays, plan), '2026-11-23').entries(),
  missed: () => fed(given(lab, trays, plan), '2026-11-21').entries(),
  done: () => evening('done').entries(),
  skipped: () => evening('skipped').entries(),
  unknown: () => evening('unknown').entries(),
  nothingLeft: () => given(lab, plan).entries(),
  pastBottle: () =>
    given(
      lab,
      bottleOf({ holds: 96, received: '2026-09-20', opened: '2026-09-20' }),
      planOf({ first: '2026-11-25', amount: 1 }),
    ).entries(),
  twoTanks: () => twoTanks().entries(),
  loggedTwice,
  emptierThanBook: () => emptierThanBook().entries(),
  crossedOut: () => crossedOut().entries(),
  longNames: () => longNames().entries(),
  ...householdsLamps,
  ...householdsMoney,
  ...householdsMoved,
  ...householdsOrder,
  ...householdsPaper,
  ...householdsTonight,
  ...householdsVolumes,
  ...householdsTrouble,
  ...householdsDiary,
  ...householdsWorth,
  ...householdsLasts,
  ...householdsLife,
  ...householdsSeeding,
} satisfies Record<string, () => readonly Held[]>
export type Household = keyof typeof households
