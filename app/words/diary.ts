/** The diary's own words: its days, when a thing was noted and by which phone, and what was crossed out. */
import {
  type Day,
  type Entry,
  type EntryStruckOut,
  type Fact,
  type Moment,
  wallClock,
  wallDay,
  writtenAt,
} from '../../core/index.ts'
import { clock, dayWords, weekday } from './dates.ts'
import { type Phones, writtenOn } from './phones.ts'
import type { Reading } from './reading.ts'
import { reasonText } from './reasons.ts'

/** "Saturday, 5 March". */
export const dayHeading = (day: Day, today: Day): string => `${weekday(day)}, ${dayWords(day, today)}`

/** "5 March, 21:42", with the year where it is not this one. */
export const dayClock = (at: Moment, { today, zone }: Reading): string =>
  `${dayWords(wallDay(at, zone), today)}, ${clock(at, zone)}`

const dayLength = 86_400_000
const addedLater = ({ id, fact }: Entry<Fact>): boolean => writtenAt(id) - fact.at > dayLength

/** A day without a time is kept as that day's noon; to say "12:00" of it would be to make something up. */
const noonForWantOfATime = ({ id, fact }: Entry<Fact>, { zone }: Reading): boolean =>
  fact.at % 60_000 === 0 &&
  wallClock(fact.at, zone).minutes === 720 &&
  wallDay(writtenAt(id), zone) !== wallDay(fact.at, zone)

/** "21:42, on kitchen phone, added later (7 March, 09:12)". */
export const notedWhen = (entry: Entry<Fact>, phones: Phones, reading: Reading): string => {
  const phone = writtenOn(entry.id, phones)
  return [
    noonForWantOfATime(entry, reading) ? 'That day' : clock(entry.fact.at, reading.zone),
    ...(phone === 'this phone' ? [] : [`on ${phone}`]),
    ...(addedLater(entry) ? [`added later (${dayClock(writtenAt(entry.id), reading)})`] : []),
  ].join(', ')
}

/** "Crossed out on 5 March, 21:50, on this phone: a slip of the finger." */
export const crossedOut = ({ id, fact }: Entry<EntryStruckOut>, phones: Phones, reading: Reading): string =>
  `Crossed out on ${dayClock(fact.at, reading)}, on ${writtenOn(id, phones)}${fact.why ? `: ${reasonText(fact.why)}` : ''}.`

/** What else goes when this is crossed out; undefined where the entry stands for itself alone. */
export const undoTakesAlong = (fact: Fact): string | undefined => {
  switch (fact.kind) {
    case 'tankRetired':
      return 'The tank is back, and its plans go on.'
    case 'foodRetired':
      return 'The food is back, and its plans go on.'
    case 'placeRetired':
      return 'The door is back.'
    case 'planEnded':
      return 'The plan goes on.'
    case 'planHeld':
      return 'The hold before it holds again, if there was one.'
    case 'portionsMoved':
      return 'The portions go back where they were. What was taken from the part that moved stays.'
    case 'doseSetAside':
      return 'The night is open again.'
    case 'nightsMissed':
    case 'nightsCounted':
      return 'The nights are open again, and will be asked about.'
    case 'phoneNamed':
      return 'The phone goes by the name before it, or by none.'
    case 'tankDescribed':
      return 'The tank goes back to how it was described before. If this is its only entry, its plans and doses stand without a tank.'
    case 'foodDescribed':
      return 'The food goes back to how it was described before. If this is its only entry, its bottles and portions stand without a food.'
    case 'placeDescribed':
      return 'What is kept there stays on record, without the name of its place.'
    case 'planMade':
      return 'The plan before it holds again. If there was none, nothing is due for this tank and food.'
    case 'bottleRecorded':
      return 'The bottle goes off the record. What was poured or frozen from it stays.'
    case 'portionsFrozen':
      return 'The portions go off the record, and the liquid is back in the bottle.'
    case 'portionsOnHand':
      return 'The portions go off the record. Doses taken from them stay.'
    case 'portionsCounted':
    case 'liquidMeasured':
      return 'The figure is again what the book said.'
    case 'questionSettled':
      return 'The question will be asked again.'
    case 'lampSeen':
    case 'powerCut':
      return 'The lamp is reckoned without it.'
    case 'freezerThawed':
    case 'fridgeTroubled':
    case 'foodSmelled':
    case 'foodSetAside':
      return 'What was set aside or cut short by it is as it was before.'
    case 'lotsJoined':
      return 'The portions go back where they were. What was taken from the bag since stays.'
    case 'purchaseRecorded':
      return 'What its bottles cost is reckoned without it.'
    case 'bottleThawed':
    case 'foodTakenBack':
    case 'foodOrdered':
    case 'orderingDescribed':
    case 'daysAway':
    case 'bottleOpened':
    case 'bottleFinished':
    case 'bottlesShaken':
    case 'bottleMoved':
    case 'lotMoved':
    case 'wellsSeen':
    case 'trayCut':
    case 'nextNightChosen':
    case 'doseGivenOffPlan':
    case 'portionsGivenAway':
    case 'equipmentDescribed':
      return 'What runs on the tank is what it was before.'
    case 'tankTreated':
    case 'podHuntersNoted':
      return 'What was said of it before holds again.'
    case 'seedingPlanned':
      return 'The plan before it holds again. If there was none, what was ticked stands without a plan.'
    case 'seedingStopped':
      return 'The night goes on where it was.'
    case 'liveBottlesCame':
    case 'liveBottlesUncapped':
    case 'seedingStepDone':
    case 'seedingWaterTaken':
    case 'seedingPoured':
    case 'letterWritten':
    case 'livePoured':
    case 'smallLifeCounted':
    case 'kindSeen':
    case 'photoKept':
    case 'noteWritten':
    case 'clashNoted':
    case 'portionsGone':
    case 'portionsFound':
    case 'liquidGone':
    case 'doseGiven':
    case 'nightSkipped':
    case 'nightUnknown':
    case 'entryStruckOut':
      return undefined
  }
}
