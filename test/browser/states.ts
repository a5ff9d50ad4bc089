/** Every screen in every state it has: what is looked at, and what axe goes through. */
import type { Browser } from './browsers.ts'
import type { Household } from './households.ts'

export type State = {
  readonly name: string
  readonly household: Household
  /** UTC. Half past eight in the evening unless said: half an hour before the lights go out. */
  readonly time?: string
  readonly route: string
  /** Folded parts are opened first. */
  readonly unfolded?: true
  /** What the browser says of itself; see browsers.ts. */
  readonly browser?: Browser
  /** Where the phone is, if not at the tank. */
  readonly zone?: string
  /** Looked round in with made-up data. */
  readonly madeUp?: true
}

const dark = '2026-11-25T22:10:00Z'
const bottle = '/food/bottle/bottle1'

export const states: readonly State[] = [
  { name: 'first evening', household: 'empty', route: '/' },
  { name: 'first evening, more exact', household: 'empty', route: '/', unfolded: true },
  { name: 'tonight, no food', household: 'tankOnly', route: '/' },
  { name: 'tonight, no plan', household: 'noPlan', route: '/' },
  { name: 'tonight, due from the bottle', household: 'bottle', route: '/' },
  { name: 'tonight, due from the trays', household: 'trays', route: '/' },
  { name: 'tonight, due in the dark', household: 'trays', route: '/', time: dark },
  { name: 'tonight, something else', household: 'trays', route: '/', time: dark, unfolded: true },
  { name: 'tonight, due since an earlier night', household: 'missed', route: '/', time: '2026-11-24T22:10:00Z' },
  { name: 'tonight, resting', household: 'trays', route: '/', time: '2026-11-24T20:30:00Z' },
  { name: 'tonight, done', household: 'done', route: '/' },
  { name: 'tonight, skipped', household: 'skipped', route: '/' },
  { name: 'tonight, not known', household: 'unknown', route: '/' },
  { name: 'tonight, nothing left', household: 'nothingLeft', route: '/' },
  { name: 'tonight, only a past bottle', household: 'pastBottle', route: '/' },
  { name: 'tonight, two tanks', household: 'twoTanks', route: '/' },
  { name: 'tonight, logged twice', household: 'loggedTwice', route: '/' },
  { name: 'tonight, emptier than the book', household: 'emptierThanBook', route: '/' },
  { name: 'tonight, long names', household: 'longNames', route: '/' },
  { name: 'tonight, a fortnight not written down', household: 'fortnight', route: '/' },
  { name: 'tonight, a fortnight of two tanks', household: 'fortnightTwoTanks', route: '/', time: dark },
  { name: 'tonight, on hold', household: 'onHold', route: '/' },
  { name: 'tonight, the hold is over', household: 'holdOver', route: '/' },
  { name: 'tonight, too much', household: 'rich', route: '/', unfolded: true },
  { name: 'tonight, resting after too much', household: 'rich', route: '/', time: '2026-11-26T20:30:00Z' },
  { name: 'tonight, two foods', household: 'twoFoods', route: '/', time: dark },
  { name: 'tonight, due in two tanks', household: 'dueInBoth', route: '/', time: dark, unfolded: true },
  { name: 'tonight, one tank done', household: 'oneDone', route: '/' },
  { name: 'tonight, both tanks done', household: 'bothDone', route: '/', unfolded: true },
  { name: 'tonight, only food long past', household: 'longPast', route: '/' },
  { name: 'a dose, exactly', household: 'dueInBoth', route: '/dose/greenplan' },
  { name: 'a dose, exactly, in the dark', household: 'dueInBoth', route: '/dose/cockleplan', time: dark },
  { name: 'a dose of past food', household: 'longPast', route: '/dose/greenplan' },
  { name: 'a dose without a plan', household: 'trays', route: '/dose/nosuchplan' },
  { name: 'food, nothing', household: 'tankOnly', route: '/food' },
  { name: 'food, a bottle and trays', household: 'frozen', route: '/food' },
  { name: 'food, trays begun', household: 'trays', route: '/food', unfolded: true },
  { name: 'food, past its day', household: 'pastBottle', route: '/food' },
  { name: 'food, long names', household: 'longNames', route: '/food' },
  { name: 'log a bottle, first', household: 'tankOnly', route: '/food/bottle/new', unfolded: true },
  { name: 'log a bottle, again', household: 'bottle', route: '/food/bottle/new' },
  { name: 'bottle', household: 'bottle', route: bottle, unfolded: true },
  { name: 'bottle, past', household: 'pastBottle', route: bottle },
  { name: 'freeze', household: 'bottle', route: `${bottle}/freeze` },
  { name: 'freeze, late', household: 'pastBottle', route: `${bottle}/freeze`, unfolded: true },
  { name: 'portions already', household: 'bottle', route: '/food/lot/new', unfolded: true },
  { name: 'trays', household: 'trays', route: '/food/lot/blueclip', unfolded: true },
  { name: 'a new food', household: 'tankOnly', route: '/food/kind/new', unfolded: true },
  { name: 'a food', household: 'trays', route: '/food/kind/greenfood', unfolded: true },
  { name: 'food, two freezers', household: 'twoFreezers', route: '/food' },
  { name: 'food, a part moved', household: 'partMoved', route: '/food' },
  { name: 'food, of a food crossed out', household: 'foodCrossedOut', route: '/food' },
  { name: 'food, a food no longer bought', household: 'comeAndGone', route: '/food' },
  { name: 'food, for the bin', household: 'pastBottle', route: '/food', time: '2026-12-20T20:30:00Z' },
  { name: 'portions to move', household: 'twoFreezers', route: '/food/lot/blueclip', unfolded: true },
  { name: 'portions of a food not on record', household: 'foodCrossedOut', route: '/food/lot/redclip' },
  { name: 'a bottle of a food not on record', household: 'foodCrossedOut', route: bottle, unfolded: true },
  { name: 'trays, touched and cut', household: 'wellsTouched', route: '/food/lot/blueclip', unfolded: true },
  { name: 'a door', household: 'partMoved', route: '/food/place/kitchenfreezer' },
  {
    name: 'a door, nothing behind it',
    household: 'foodsThatMeet',
    route: '/food/place/boathousefreezer',
    unfolded: true,
  },
  { name: 'a door that is gone', household: 'comeAndGone', route: '/food/place/boathousefreezer' },
  { name: 'another door', household: 'trays', route: '/food/place/new' },
  { name: 'a food no longer bought', household: 'comeAndGone', route: '/food/kind/amberfood' },
  { name: 'water, two foods', household: 'foodsThatMeet', route: '/water' },
  { name: 'water, two foods in step', household: 'foodsInStep', route: '/water', unfolded: true },
  { name: 'water, a plan on hold', household: 'planOnHold', route: '/water', unfolded: true },
  { name: 'water, tanks that were', household: 'comeAndGone', route: '/water' },
  { name: 'a plan on fixed nights', household: 'planOnHold', route: '/water/plan/longgallery/greenfood' },
  { name: 'a tank, all of it', household: 'twoTanks', route: '/water/tank/cockle', unfolded: true },
  { name: 'water, nothing', household: 'empty', route: '/water' },
  { name: 'water', household: 'twoTanks', route: '/water', unfolded: true },
  { name: 'a new tank', household: 'empty', route: '/water/tank/new', unfolded: true },
  { name: 'a tank', household: 'trays', route: '/water/tank/longgallery' },
  { name: 'a plan', household: 'trays', route: '/water/plan/longgallery' },
  { name: 'a plan without food', household: 'tankOnly', route: '/water/plan/longgallery' },
  { name: 'diary, nothing', household: 'empty', route: '/diary' },
  { name: 'diary', household: 'crossedOut', route: '/diary' },
  { name: 'diary, logged twice', household: 'loggedTwice', route: '/diary' },
  { name: 'diary, notes and named phones', household: 'written', route: '/diary' },
  { name: 'diary, something looked up', household: 'written', route: '/diary', unfolded: true },
  { name: 'diary, a dose set aside', household: 'setAside', route: '/diary' },
  { name: 'diary, two phones say two things', household: 'disputed', route: '/diary' },
  { name: 'diary, a plan crossed out', household: 'planGone', route: '/diary' },
  { name: 'diary, entries of a newer version', household: 'newer', route: '/diary' },
  { name: 'diary, long names', household: 'longNames', route: '/diary', unfolded: true },
  { name: 'a note', household: 'twoTanks', route: '/diary/note' },
  { name: 'a note on an earlier day', household: 'twoTanks', route: '/diary/note/2026-11-12' },
  { name: 'looking round, tonight', household: 'empty', route: '/', madeUp: true },
  { name: 'looking round, in the dark', household: 'empty', route: '/', time: dark, madeUp: true },
  { name: 'looking round, food', household: 'empty', route: '/food', madeUp: true, unfolded: true },
  { name: 'looking round, diary', household: 'empty', route: '/diary', madeUp: true },
  { name: 'looking round, this phone', household: 'empty', route: '/phone', madeUp: true },
  { name: 'this phone', household: 'trays', route: '/phone' },
  { name: 'this phone, its name asked', household: 'written', route: '/phone', unfolded: true },
  { name: 'this phone, entries of a newer version', household: 'newer', route: '/phone' },
  { name: 'reminders, not asked for', household: 'trays', route: '/phone/reminders' },
  { name: 'reminders, all that there is', household: 'twoTanks', route: '/phone/reminders', browser: 'everything' },
  { name: 'reminders, forbidden', household: 'trays', route: '/phone/reminders', browser: 'forbidden' },
  { name: 'reminders, taken back', household: 'trays', route: '/phone/reminders', browser: 'takenBack' },
  { name: 'reminders, home screen first', household: 'trays', route: '/phone/reminders', browser: 'homeScreenFirst' },
  { name: 'reminders, nothing ahead', household: 'tankOnly', route: '/phone/reminders', browser: 'nothing' },
  { name: 'evening watch', household: 'trays', route: '/watch' },
  { name: 'evening watch, it is time', household: 'dueInBoth', route: '/watch', time: dark },
  { name: 'tonight, the lamp is late', household: 'lampLate', route: '/', time: dark },
  { name: 'tonight, from far away', household: 'trays', route: '/', zone: 'Asia/Tokyo' },
  {
    name: 'tonight, the clocks are about to change',
    household: 'lampInOctober',
    route: '/',
    time: '2026-10-23T19:30:00Z',
  },
  { name: 'water, a lamp that is late', household: 'lampLate', route: '/water', unfolded: true },
  { name: 'water, a lamp that forgot', household: 'lampForgot', route: '/water', unfolded: true },
  {
    name: 'water, the clocks are about to change',
    household: 'lampInOctober',
    route: '/water',
    time: '2026-10-23T19:30:00Z',
  },
  { name: 'this phone, a month without a backup', household: 'trays', route: '/phone', time: '2027-01-13T20:30:00Z' },
  { name: 'live bottles', household: 'tankOnly', route: '/seeding/longgallery', unfolded: true },
  { name: 'live bottles, what runs here', household: 'tankOnly', route: '/seeding/longgallery/equipment' },
  {
    name: 'live bottles, at the door',
    household: 'liveBottlesCame',
    route: '/seeding/longgallery/arrival',
    unfolded: true,
  },
  { name: 'live bottles, the plan', household: 'liveBottlesCame', route: '/seeding/longgallery/plan', unfolded: true },
  {
    name: 'the night, half way',
    household: 'nightHalfWay',
    route: '/seeding/run/run1',
    time: '2026-11-25T21:50:00Z',
    unfolded: true,
  },
  {
    name: 'the night, pumps late',
    household: 'nightHalfWay',
    route: '/seeding/run/run1',
    time: '2026-11-25T22:57:00Z',
  },
]

export const stateCalled = (name: string): State => {
  const found = states.find((state) => state.name === name)
  if (!found) throw new Error(`No state is called ${name}`)
  return found
}

export const looks = ['day', 'night'] as const
