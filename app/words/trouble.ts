/** What is said of food in doubt: thawed, too warm, frozen by mistake, smelt at, set aside. */
import {
  type Aside,
  type Bottle,
  type BottleFound,
  type BottleVerdict,
  type Day,
  type FoodDescribed,
  type FoodSmelled,
  type FoundAs,
  type Lasts,
  type Lot,
  shutFreezerHours,
  shutFridgeHours,
  type ThawVerdict,
  wallDay,
  warmHours,
} from '../../core/index.ts'
import { dayWords, nightFrom, nightWords } from './dates.ts'
import { foundWords } from './foodEntries.ts'
import { capital, inWords, number, portions } from './numbers.ts'
import type { Reading } from './reading.ts'
import { reasonText } from './reasons.ts'

export const keepFreezerShut = `Keep it shut: full, it stays frozen for about ${shutFreezerHours.full} hours; half full, about ${shutFreezerHours.halfFull}.`
export const keepFridgeShut = `Keep it shut: closed, it stays cold for about ${inWords(shutFridgeHours)} hours, and nothing is lost by then.`

/** Under the hours above, and under those it is judged by. */
export const hoursHabit = 'These hours are common practice; your food’s label goes first.'

export type Option<Value extends string> = { readonly value: Value; readonly label: string; readonly hint: string }

/** How to tell, without a thermometer. */
export const foundOptions: readonly Option<FoundAs>[] = [
  { value: 'icy', label: 'Still hard with frost', hint: 'Hard under the thumb, ice on the bag.' },
  { value: 'cold', label: 'Thawed, but cold', hint: 'Soft or liquid, and as cold as from the fridge: 5 °C or less.' },
  {
    value: 'warm',
    label: `Warm for over ${inWords(warmHours)} hours`,
    hint: 'Liquid, and no longer cold to the hand.',
  },
  { value: 'notKnown', label: 'I can’t tell', hint: 'It is set aside until you have looked and smelt.' },
]
export const bottleFoundOptions: readonly Option<BottleFound['found']>[] = [
  {
    value: 'fine',
    label: 'As cold as ever',
    hint: `The door stayed shut, about ${inWords(shutFridgeHours)} hours at most.`,
  },
  { value: 'warm', label: 'Too warm, for longer', hint: 'It is set aside until you have smelt at it.' },
  { value: 'frozen', label: 'Frozen, and whole', hint: 'Look at the glass all round before you say so.' },
  { value: 'cracked', label: 'Frozen, and cracked', hint: 'It is set aside: splinters.' },
]

/** "Saturday and Sunday night, until 4 July". */
const nightsWords = (on: Day, until: Day, today: Day): string =>
  until < on ? `past since ${dayWords(until, today)}` : `good through ${nightWords(until)}, ${dayWords(until, today)}`

/** "1 has a dose night in time; 30 are for the bin or for feeding a culture." */
export const spareWords = (left: number, spare: number): string => {
  if (spare === 0) return ''
  const bin = `${spare === left ? 'No dose night falls in that time: ' : ''}${number(spare)} ${spare === 1 ? 'is' : 'are'} for the bin or for feeding a culture.`
  const used = left - spare
  return used === 0 ? bin : `${number(used)} ${used === 1 ? 'has' : 'have'} a dose night in time; ${bin}`
}

/** What a bag comes to, before it is saved. */
export const verdictWords = (
  { lot, left, is, after }: ThawVerdict,
  on: Day,
  spare: number,
  { today }: Reading,
): string => {
  const many = capital(portions(left))
  const still = lot.aside ? ' Set aside as before.' : ''
  switch (is) {
    case 'stays':
      return `${many} ${left === 1 ? 'stays' : 'stay'}, a little softer${after ? `: good until ${dayWords(after, today)}, as before` : ''}.${still}`
    case 'twoNights':
      return [
        `${many}, ${after ? nightsWords(on, after, today) : 'good for two nights'}, and not frozen again.`,
        spareWords(left, spare),
        still.trim(),
      ]
        .filter(Boolean)
        .join(' ')
    case 'forTheBin':
      return `${many} set aside. The bin is best; nothing is thrown away for you.`
    case 'toLookAt':
      return `${many} set aside until you have looked and smelt. Nothing is thrown away for you.`
  }
}
export const bottleVerdictWords = ({ found, before, after }: BottleVerdict, { today }: Reading): string => {
  switch (found) {
    case 'fine':
      return before ? `Good until ${dayWords(before, today)}, as before.` : 'It stays as it is.'
    case 'warm':
      return 'Set aside until you have smelt at it. Nothing is thrown away for you.'
    case 'frozen':
      return `Kept frozen, as a block: do not let it thaw until you want it.${after ? ` Good frozen until ${dayWords(after, today)}.` : ' No life in the freezer is promised for this food.'} Thawed, it is good that night and the next.`
    case 'cracked':
      return 'Set aside. Gloves, and mind the splinters: what has touched broken glass does not go into a tank.'
  }
}

/** "Green food is then enough until 3 July; first night without food 5 July, not 1 September." */
export const thenLastsWords = (
  food: FoodDescribed,
  before: Lasts | undefined,
  after: Lasts | undefined,
  today: Day,
): string | undefined => {
  if (!after) return undefined
  const bare = `irst night without food ${dayWords(after.bareNight, today)}`
  if (before?.bareNight === after.bareNight) return `${food.name} lasts as before: f${bare}.`
  const was = before ? `, not ${dayWords(before.bareNight, today)}` : ''
  return after.lastNight
    ? `${food.name} is then enough until ${dayWords(after.lastNight, today)}; f${bare}${was}.`
    : `${food.name}: f${bare}${was}.`
}

const because: Readonly<Record<Aside['because'], string>> = {
  said: 'by your word',
  smell: 'by its smell or look',
  warm: 'warm for too long',
  notKnown: 'not known how it was',
  cracked: 'cracked glass',
}
/** "set aside since 3 July: by its smell or look, like drains". */
export const asideWords = ({ at, because: cause, why }: Aside, { today, zone }: Reading): string =>
  `set aside since ${dayWords(wallDay(at, zone), today)}: ${because[cause]}${why ? `, ${reasonText(why)}` : ''}`

/** "thawed, found on 3 July". */
export const thawedWords = (on: Day, today: Day): string => `${foundWords.cold}, found on ${dayWords(on, today)}`

const smelt = { first: 'First sniff', good: 'Good', unsure: 'Unsure', off: 'Off' } as const
/** "First sniff, 20 June: sharp, like low tide." */
export const sniffWords = ({ found, at, words }: FoodSmelled, { today, zone }: Reading): string =>
  `${smelt[found]}, ${dayWords(wallDay(at, zone), today)}${words ? `: ${words}` : ''}.`

/** What to look for, beside its own first sniff. */
export const offSigns = 'Much worse than its first sniff, clumps that do not shake out, or brown where it was green.'
export const strongIsNormal = 'A strong smell and a puff of gas at opening are normal.'
export const sniffOptions = (first: boolean): readonly Option<FoodSmelled['found']>[] => [
  ...(first
    ? []
    : [
        {
          value: 'first' as const,
          label: 'Its first sniff',
          hint: `What later ones are judged against. ${strongIsNormal}`,
        },
      ]),
  { value: 'good', label: 'Good', hint: 'As it always was.' },
  { value: 'unsure', label: 'Unsure', hint: 'It is set aside until you smell it again.' },
  { value: 'off', label: 'Off', hint: `${offSigns} It is set aside.` },
]

/** "1 mL to Long Gallery, Thursday night, 1 July". */
export const tracedWords = (tank: string, amount: string, night: Day, tonight: Day): string =>
  `${amount} to ${tank}, ${nightFrom(night, tonight)}`

/** What is in a bag beside its own: "12 portions of blue clip, frozen 3 June". */
export const joinedWords = ({ joined }: Lot, nameOf: (lot: Lot['id']) => string, today: Day): readonly string[] =>
  joined.map(
    ({ lot, count, frozenOn, late }) =>
      `${portions(count)} of ${nameOf(lot)}, frozen ${dayWords(frozenOn, today)}${late ? ', late' : ''}`,
  )

/** "53 portions in blue clip then, all of them good until 3 June 2028: as the one that goes first." */
export const willJoinWords = (count: number, mark: string, lastGood: Day | undefined, today: Day): string =>
  `${capital(portions(count))} in ${mark} then${lastGood ? `, all of them good until ${dayWords(lastGood, today)}, as those that go first` : ''}. Write both marks on it.`
export const haveJoinedWords = (count: number, mark: string): string =>
  `${capital(portions(count))} went into the bag of ${mark}.`

/** Beside a bag on the shelf: that it is set aside, has thawed, or is a little softer; undefined where nothing is the matter. */
export const lotDoubt = (
  { aside, meltedOn }: Lot,
  left: number,
  spare: number | undefined,
  lastGood: Day | undefined,
  reading: Reading,
): string | undefined => {
  if (aside) return asideWords(aside, reading)
  if (!meltedOn) return undefined
  const { today } = reading
  const until = lastGood && lastGood < today ? `past since ${dayWords(lastGood, today)}` : undefined
  const rest = spareWords(left, spare ?? 0).replace(/\.$/, '')
  return [thawedWords(meltedOn, today), until ?? (lastGood && `good through ${nightFrom(lastGood, today)}`), rest]
    .filter(Boolean)
    .join('; ')
}

/** Beside a bottle: that it is set aside, a block of ice, or one that was. */
export const bottleDoubt = ({ aside, frozeOn, thawedOn }: Bottle, reading: Reading): string | undefined => {
  const { today } = reading
  if (aside) return asideWords(aside, reading)
  if (thawedOn) return `frozen by mistake, and thawed on ${dayWords(thawedOn, today)}: not frozen again`
  return frozeOn && `frozen by mistake on ${dayWords(frozeOn, today)}, and kept as a block`
}
