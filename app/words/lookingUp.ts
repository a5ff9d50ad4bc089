/** The diary looked through for one thing: its kinds in plain words, and how many there are. */
import type { FactKind } from '../../core/index.ts'
import { number, plural } from './numbers.ts'

export type Group = 'doses' | 'food' | 'water' | 'notes' | 'smallLife' | 'house' | 'crossedOut'

const groupOf: Readonly<Record<FactKind, Group>> = {
  doseGiven: 'doses',
  doseGivenOffPlan: 'doses',
  doseSetAside: 'doses',
  nightSkipped: 'doses',
  nightUnknown: 'doses',
  nightsMissed: 'doses',
  nightsCounted: 'doses',
  foodDescribed: 'food',
  foodRetired: 'food',
  bottleRecorded: 'food',
  bottleOpened: 'food',
  bottleFinished: 'food',
  bottlesShaken: 'food',
  bottleMoved: 'food',
  lotMoved: 'food',
  portionsMoved: 'food',
  wellsSeen: 'food',
  trayCut: 'food',
  portionsFrozen: 'food',
  portionsOnHand: 'food',
  portionsCounted: 'food',
  portionsGone: 'food',
  portionsGivenAway: 'food',
  portionsFound: 'food',
  liquidMeasured: 'food',
  liquidGone: 'food',
  freezerThawed: 'food',
  fridgeTroubled: 'food',
  bottleThawed: 'food',
  foodSmelled: 'food',
  foodSetAside: 'food',
  foodTakenBack: 'food',
  lotsJoined: 'food',
  purchaseRecorded: 'food',
  foodOrdered: 'food',
  orderingDescribed: 'house',
  daysAway: 'house',
  tankDescribed: 'water',
  tankRetired: 'water',
  lampSeen: 'water',
  powerCut: 'water',
  planMade: 'water',
  planEnded: 'water',
  planHeld: 'water',
  nextNightChosen: 'water',
  equipmentDescribed: 'smallLife',
  tankTreated: 'smallLife',
  podHuntersNoted: 'smallLife',
  liveBottlesCame: 'smallLife',
  liveBottlesUncapped: 'smallLife',
  seedingPlanned: 'smallLife',
  seedingStepDone: 'smallLife',
  seedingWaterTaken: 'smallLife',
  seedingPoured: 'smallLife',
  seedingStopped: 'smallLife',
  letterWritten: 'smallLife',
  livePoured: 'smallLife',
  smallLifeCounted: 'smallLife',
  kindSeen: 'smallLife',
  photoKept: 'smallLife',
  noteWritten: 'notes',
  placeDescribed: 'food',
  placeRetired: 'food',
  phoneNamed: 'house',
  clashNoted: 'house',
  questionSettled: 'house',
  entryStruckOut: 'crossedOut',
}
/** What is crossed out is found under what it was, too. */
export const belongsTo = (group: Group, kind: FactKind, struck: boolean): boolean =>
  groupOf[kind] === group || (group === 'crossedOut' && struck)

const groupNames: Readonly<Record<Group, string>> = {
  doses: 'doses and nights',
  food: 'bottles, portions, doors',
  water: 'water and plans',
  notes: 'notes',
  smallLife: 'the small life',
  house: 'phones and questions',
  crossedOut: 'crossed out',
}
const order: readonly Group[] = ['doses', 'food', 'water', 'notes', 'smallLife', 'house', 'crossedOut']
export const groupOptions = order.map((value) => ({ value, label: groupNames[value] }))

export type LookedFor = {
  readonly group: Group | null
  /** The tank's name. */
  readonly tank: string | undefined
  /** The day in words. */
  readonly upTo: string | undefined
}

const only = ({ group, tank, upTo }: LookedFor): string =>
  [group && groupNames[group], tank && `of ${tank}`, upTo && `up to ${upTo}`].filter(Boolean).join(', ')

/** "Only notes, of Long Gallery, up to 5 March 2027: 34 entries." Also where there are none. */
export const foundText = (looked: LookedFor, count: number): string =>
  count === 0
    ? `Nothing is written here of this: ${only(looked)}.`
    : `Only ${only(looked)}: ${plural(count, 'entry', 'entries')}.`

export const shownText = (shown: number, of: number): string =>
  shown < of
    ? `The newest ${number(shown)} of ${plural(of, 'entry', 'entries')}.`
    : `All ${plural(of, 'entry', 'entries')}.`
