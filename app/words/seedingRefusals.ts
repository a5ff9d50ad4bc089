/** Refusals only the screens of live bottles make, as sentences; every other goes its usual way. */
import type {
  AmountRefusal,
  ArrivalRefusal,
  EquipmentRefusal,
  LetterRefusal,
  NeededRefusal,
  PouredRefusal,
  RunRefusal,
  SeedingRefusal,
  UncapRefusal,
} from '../../core/index.ts'
import { clock } from './dates.ts'
import { number } from './numbers.ts'
import type { Reading } from './reading.ts'
import { type AnyRefusal, refusalText } from './refusals.ts'
import { gravityWords } from './seeding.ts'

/** Refusals that share a shape, one by one: each is told apart by its reason. */
type Apart<Refusal extends { readonly why: string }> = Refusal extends unknown
  ? { readonly [Why in Refusal['why']]: Omit<Refusal, 'why'> & { readonly why: Why } }[Refusal['why']]
  : never

export type SeedingFieldRefusal =
  | AnyRefusal
  | Apart<
      | AmountRefusal
      | SeedingRefusal
      | RunRefusal
      | PouredRefusal
      | LetterRefusal
      | EquipmentRefusal
      | ArrivalRefusal
      | UncapRefusal
      | NeededRefusal
      | { readonly why: 'noSuchParcel' | 'whenMissing' | 'animalsMissing' | 'noNumberBelow' }
    >

/** @param zone the tank's own */
export const seedingRefusal = (refusal: SeedingFieldRefusal, reading: Reading): string => {
  switch (refusal.why) {
    case 'noEquipment':
      return 'Say first what runs on this tank: the steps are made from it.'
    case 'nothingToPour':
      return 'How many bottles, and where to? Half a bottle is 0.5.'
    case 'bottlesNotPositive':
      return 'More than 0 and at most 1,000 bottles; leave it empty for none.'
    case 'treatedWater':
      return refusal.with === 'copper'
        ? 'There is copper in this water. It kills copepods and rotifers: nothing is planned until it is out.'
        : 'There is a medicine in this water, and many kill copepods and rotifers: nothing is planned until it is out.'
    case 'alreadyGone':
      return 'That hour is past. Choose one that is still to come; what was poured already can be written down as it was.'
    case 'underWay':
      return 'The pumps have been off, something is poured, or the night is over: the plan stands as it is.'
    case 'notSalinity':
      return refusal.typed < 2
        ? gravityWords(refusal.typed)
        : 'Between 2 and 45 parts per thousand; left empty if not known.'
    case 'morningFirst':
      return 'The morning comes after the pumps go off.'
    case 'displayLit':
      return `The display is lit until ${clock(refusal.dark, reading.zone)}. In the light fish eat what is poured: the pumps go off once it is dark.`
    case 'killsWhatIsPoured':
      return refusal.device === 'uv'
        ? 'The UV lamp would stay on, and it kills what is poured. Let it stop for the pour.'
        : 'The ozone would stay on, and it kills what is poured. Let it stop for the pour.'
    case 'noSuchRun':
      return 'This night is not on record any more.'
    case 'noSuchStep':
      return 'This step is not in the plan any more.'
    case 'doneAlready':
      return 'It is ticked already.'
    case 'stoppedAlready':
      return 'It is stopped already.'
    case 'amountNotPositive':
      return 'More than 0, please.'
    case 'opensTooSoon':
      return 'A letter opens tomorrow or later.'
    case 'noPlaces':
      return 'Where may they go? One place at least.'
    case 'sameKey':
      return 'Two devices would go by one mark. Take one of them away and add it again.'
    case 'noBottles':
      return 'How many bottles came?'
    case 'claimHours':
      return `Hours, more than 0 and at most ${number(refusal.most)}.`
    case 'uncappedAlready':
      return 'They are open already.'
    case 'noSuchParcel':
      return 'These bottles are not on record any more.'
    case 'reachNotPositive':
      return 'One bottle seeds more than 0.'
    case 'whenMissing':
      return 'When was it? The day and about the hour.'
    case 'dayMissing':
      return 'On which day?'
    case 'animalsMissing':
      return 'What is in them? One kind at least.'
    case 'noNumberBelow':
      return 'This cannot be below 0.'
    case 'notYet':
      return 'at' in refusal ? refusalText({ why: 'notYet', at: refusal.at }, reading) : 'That has not come yet.'
    default:
      return refusalText(refusal, reading)
  }
}
