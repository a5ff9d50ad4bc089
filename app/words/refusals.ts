/** Every refusal as a sentence with its numbers in it. Exhaustive: a new refusal does not compile until it has words. */
import type {
  AmendRefusal,
  AmountRefusal,
  BottleChangeRefusal,
  BottleRefusal,
  ChoiceRefusal,
  ClashRefusal,
  CountRefusal,
  DateName,
  DoseRefusal,
  FoodKind,
  FoodRefusal,
  FreezeRefusal,
  HoldRefusal,
  ImportRefusal,
  LampRefusal,
  MoveRefusal,
  NightRefusal,
  NightsCountRefusal,
  NoteRefusal,
  NumberRefusal,
  PlanRefusal,
  PortionsRefusal,
  PowerCutRefusal,
  RetireRefusal,
  StrikeRefusal,
  TankRefusal,
  TrayRefusal,
  WaterRefusal,
} from '../../core/index.ts'
import type { FileTooLarge, FileUnreadable, NotHandedOver } from '../storage/backupRefusals.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import type { ImportStopped } from '../storage/importing.ts'
import { clock, dayInFull, nightFrom } from './dates.ts'
import { asTyped, capital, inWords, millilitres, number, plural, portions, times, toDecimals } from './numbers.ts'
import type { Reading } from './reading.ts'

export type AnyRefusal =
  | NumberRefusal
  | AmountRefusal
  | WaterRefusal
  | TankRefusal
  | LampRefusal
  | PowerCutRefusal
  | FoodRefusal
  | BottleRefusal
  | BottleChangeRefusal
  | PortionsRefusal
  | CountRefusal
  | FreezeRefusal
  | PlanRefusal
  | DoseRefusal
  | NightRefusal
  | NightsCountRefusal
  | HoldRefusal
  | ChoiceRefusal
  | AmendRefusal
  | MoveRefusal
  | TrayRefusal
  | RetireRefusal
  | NoteRefusal
  | ClashRefusal
  | StrikeRefusal
  | ImportRefusal
  | StorageRefusal
  | ImportStopped
  | FileTooLarge
  | FileUnreadable
  | NotHandedOver

const done: Record<DateName, string> = { bottled: 'bottled', received: 'received', opened: 'opened', frozen: 'frozen' }
const sorts: Record<FoodKind, string> = {
  freshNonViable: 'A fresh concentrate',
  live: 'A live food',
  shelfStable: 'A shelf-stable food',
}
const megabytes = (bytes: number): string => `${number(bytes / 1_048_576)} MB`

export const refusalText = (refusal: AnyRefusal, { today, zone }: Reading): string => {
  switch (refusal.why) {
    case 'empty':
      return 'Nothing is entered here yet.'
    case 'notANumber':
      return `“${refusal.typed}” is not a number I can read.`
    case 'twoReadings':
      // The point stands before three figures there, and all three are what is asked about.
      return `“${refusal.typed}” can be read two ways: ${toDecimals(refusal.readings[0], 3)} or ${number(refusal.readings[1])}. Type ${asTyped(refusal.readings[0])} or ${asTyped(refusal.readings[1])}.`
    case 'notPositive':
      return 'This has to be more than 0.'
    case 'tooMuch':
      return `More than ${number(refusal.most)} mL is more than any household has.`
    case 'unitUnknown':
      return `${number(refusal.value)} of what? Litres, US gallons and imperial gallons are far apart.`
    case 'vast':
      return `${number(refusal.litres)} litres is bigger than a van. Is that right?`
    case 'beyondAnyTank':
      return 'No tank is that large. Look at the number and its unit again.'
    case 'noWater':
      return 'A tank needs more than 0 litres.'
    case 'dryTank':
      return 'With these measurements no water is left in the tank.'
    case 'zoneUnknown':
      return `“${refusal.zone}” is not a time zone this phone knows.`
    case 'lightsOutMissing':
      return 'When do the lights go out? The hour and the minute are enough.'
    case 'tankUnknown':
      return 'Which tank’s lamp was it? One at least.'
    case 'cutNotWhole':
      return 'Whole minutes, one at least: what was shorter moved no dial.'
    case 'cutTooLong':
      return `Longer than ${number(refusal.longest / 1440)} days: set the lamp’s clock and say when it goes out instead.`
    case 'markNotPositive':
      return 'The pipette’s mark has to be more than 0 mL.'
    case 'bandUpsideDown':
      return `The low end, ${millilitres(refusal.low)}, is above the high end, ${millilitres(refusal.high)}.`
    case 'bandEmpty':
      return 'The range needs more than 0 mL, for more than 0 of water.'
    case 'lifeOutOfRange':
      return `${number(refusal.asked.count)} ${refusal.asked.unit} in the ${refusal.which}? It has to be a whole number from 1 to ${number(refusal.most)}.`
    case 'nightsOutOfRange':
      return `Nights between doses are a whole number from 1 to 14, not ${number(refusal.asked)}.`
    case 'shakeOutOfRange':
      return `${number(refusal.asked)} hours between shakes? It has to be from 1 to 720.`
    case 'residueOutOfRange':
      return 'What stays on the walls is a share from 0 to 20 %.'
    case 'noFreezerLife':
    case 'notForFreezing':
      return `${sorts[refusal.sort]} is not promised a life in the freezer.`
    case 'noSuchFood':
      return 'This food is not on record any more.'
    case 'noSuchTank':
      return 'This tank is not on record any more.'
    case 'noSuchBottle':
      return 'This bottle is not on record any more.'
    case 'noSuchLot':
      return 'These portions are not on record any more.'
    case 'noSuchPlan':
      return 'There is no plan for this any more.'
    case 'noSuchPlace':
      return 'This place is not on record any more.'
    case 'noSuchTray':
    case 'noSuchWell':
      return 'The tray looks different now. Look at it once more.'
    case 'outByTheBook':
      return 'By the book that one is out. Touch the well it really came from.'
    case 'alreadyThere':
      return 'It is there already.'
    case 'notEmpty':
      return `${refusal.things === 1 ? 'One thing still stands' : `${number(refusal.things)} things still stand`} behind this door. Move them first.`
    case 'holdInThePast':
      return `${dayInFull(refusal.until)} is past. A hold ends tonight or later.`
    case 'notAfter':
      return `${capital(nightFrom(refusal.next, today))} is not after it.`
    case 'holdTooLong':
      return 'A hold is a year at most. End the plan instead; it can be made again.'
    case 'nightToCome':
      return `${capital(nightFrom(refusal.night, today))} has not come yet.`
    case 'nightKnown':
      return `Something is noted for ${nightFrom(refusal.night, today)} by now. Look once more.`
    case 'noNights':
      return 'Nothing is open any more.'
    case 'noWords':
      return 'A word or two, please.'
    case 'tooLong':
      return `That is longer than ${number(refusal.most)} letters.`
    case 'cannotBeRead':
      return 'This version cannot read what the other phone wrote.'
    case 'sizeNotPositive':
      return 'A bottle holds more than 0.'
    case 'fullOutOfRange':
      return 'How full it is goes from a little above 0 to 100 %.'
    case 'outOfOrder':
      return `${capital(done[refusal.after])} on ${dayInFull(refusal.afterDay)}, but ${done[refusal.before]} only on ${dayInFull(refusal.beforeDay)}?${
        refusal.swapped ? ` Did you mean ${dayInFull(refusal.swapped)}?` : ''
      }`
    case 'dayNotYet':
      return `${dayInFull(refusal.day)} has not come yet; today is ${dayInFull(refusal.today)}.`
    case 'moreThanThere':
      return `There are only ${millilitres(refusal.there)} in it by the book.`
    case 'portionEmpty':
      return 'A portion holds more than 0 mL.'
    case 'wholePortions':
      return 'Portions are counted whole; a half belongs to the dose.'
    case 'traysDisagree':
      return `The trays hold ${number(refusal.inTrays)}, but you made ${portions(refusal.portions)}.`
    case 'frozenLate':
      return `${plural(refusal.days, 'day', 'days')} past its last good day in the fridge, ${dayInFull(refusal.lastGood)}. Frozen late it keeps 12 months instead of its full time.`
    case 'moreThanBottleHeld':
      return `That needs ${millilitres(refusal.needs)}, and the bottle had ${millilitres(refusal.holds)} by the book. If nothing was added, each holds about ${millilitres(refusal.eachWouldBe)}.`
    case 'notACount':
      return `A count is a whole number, not ${number(refusal.asked)}.`
    case 'tooMany':
      return 'So many? Look at the number again.'
    case 'moreThanLeft':
      return `There are only ${portions(refusal.left)} left by the book. Count them first if there are more.`
    case 'wellTooSmall':
      return `Frozen food grows by about a tenth: a well this size takes at most ${millilitres(refusal.most)}.`
    case 'nothingToFreeze':
      return 'That leaves less than one portion to freeze.'
    case 'notWhole':
      return 'Wells and trays are whole numbers, and a portion is more than 0 mL.'
    case 'noAmount':
      return 'A plan needs a dose of more than 0 mL.'
    case 'aboveRange':
      return `That is ${times(refusal.ratio)} the top of the range, ${millilitres(refusal.top)}.`
    case 'farAboveRange':
      return `That is ${times(refusal.ratio)} the top of the range, ${millilitres(refusal.top)}. So much food takes the oxygen out of the water.`
    case 'nothingGiven':
      return 'Nothing given is no dose. Was it skipped, or dropped?'
    case 'notYet':
      return `${clock(refusal.at, zone)} has not come yet.`
    case 'justRecorded':
      return 'Already noted.'
    case 'alreadyGiven':
      return `${millilitres(refusal.mark.amount)} is noted already for ${nightFrom(refusal.night, today)}, at ${clock(refusal.mark.at, zone)}.`
    case 'moreThanBottleHolds':
      return `That is ${millilitres(refusal.asked)}; the bottle has ${millilitres(refusal.holds)} by the book.`
    case 'fromAside':
      return 'This is set aside.'
    case 'pastItsDay':
      return `${capital(refusal.days === 1 ? 'one day' : `${inWords(refusal.days)} days`)} past its usual time: sniff and look.`
    case 'noSuchEntry':
      return 'This entry is not here any more.'
    case 'alreadyCrossedOut':
      return 'This is crossed out already.'
    case 'isCrossingOut':
      return 'A crossing-out cannot be crossed out. Enter what happened again instead.'
    case 'notALedger':
      return 'This file is not a Smallhours backup. Nothing here was changed.'
    case 'newerFormat':
      return 'This backup was written by a newer Smallhours. Take the update first; nothing here was changed.'
    case 'cutShort':
      return `This backup is cut short: it should hold ${number(refusal.expected)} entries and holds ${number(refusal.found)}. Nothing here was changed.`
    case 'brokenLine':
      return `Line ${number(refusal.line)} of this backup cannot be read. Nothing here was changed.`
    case 'sameIdTwice':
      return `Line ${number(refusal.line)} of this backup says something other than an earlier line of the same name. Nothing here was changed.`
    case 'tooLarge':
      return 'This file is far larger than any backup. Nothing here was changed.'
    case 'closedForUpdate':
      return 'A newer Smallhours is open in another window. What you typed is kept; reload this one to go on.'
    case 'storageFull':
      return 'This phone has no room left, so nothing was saved. Free some space and try again; what you typed is kept.'
    case 'storageFailed':
      return `This phone could not save it (${refusal.message}). What you typed is kept; try again.`
    case 'importStopped':
      return 'Stopped. Nothing of the file was taken in.'
    case 'fileTooLarge':
      return `This file has ${megabytes(refusal.bytes)}; a backup has at most ${megabytes(refusal.most)}.`
    case 'fileUnreadable':
      return 'This file could not be read from where it lies. Copy it to this phone and try again.'
    case 'notHandedOver':
      return 'The backup was not handed over. Nothing is lost; try again when you like.'
  }
}
