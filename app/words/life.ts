/** The diary of the small life in words: what was counted, what it says, what comes next, and what its forms refuse. */
import type {
  AnimalDensity,
  CountChange,
  CountedRefusal,
  CountPoint,
  CountSeries,
  Day,
  KindRefusal,
  Looked,
  NumberRefusal,
  PodEaters,
  Pour,
  Reseed,
  ReseedReason,
  Since,
  SmallLifeCounted,
  TorchCount,
} from '../../core/index.ts'
import { clock, dayInFull, dayWords, weekday } from './dates.ts'
import { list } from './list.ts'
import { capital, inWords, number, plural, times, toDecimals } from './numbers.ts'
import type { Reading } from './reading.ts'
import { reasonText } from './reasons.ts'
import { type AnyRefusal, refusalText } from './refusals.ts'
import { animalWords, placeWords } from './seedingEntries.ts'

/** Whole from ten up: an animal more or less is nothing there. */
const figure = (value: number): string => toDecimals(value, value < 10 ? 1 : 0)
export const perWords = { square: 'in 10 by 10 cm', litre: 'per litre' } as const

/** What a figure is told for, and whether the sieve makes it a least one. */
type Scale = Pick<CountSeries, 'per' | 'least'>

/** "About 125 per litre; the truth lies between 70 and 206." */
export const densityWords = (density: AnimalDensity, { per, least: atLeast }: Scale): string => {
  if (density.is === 'noneSeen') return `None seen: fewer than ${figure(density.fewerThan)} ${perWords[per]}.`
  const { low, high } = density.range
  const least = atLeast ? 'At least about' : 'About'
  return `${least} ${figure(density.per)} ${perWords[per]}, between ${figure(low)} and ${figure(high)}.`
}
/** For a table: "125 (70 to 206)", "fewer than 31". */
export const densityShort = (density: AnimalDensity): string =>
  density.is === 'noneSeen'
    ? `fewer than ${figure(density.fewerThan)}`
    : `${figure(density.per)} (${figure(density.range.low)} to ${figure(density.range.high)})`
export const clumpedWords = 'The looks differ by more than chance: they sit in clumps, and the range is wider for it.'

const ways: Readonly<Record<Looked['how'], string>> = {
  torch: 'By torch',
  pane: 'On a pane by day',
  jar: 'In a jar, through a sieve',
}
export const seriesTitle = ({ how, where, sieve, seconds, least }: CountSeries): string =>
  [
    ways[how],
    ...(where ? [where] : []),
    ...(sieve === undefined ? [] : [`${number(sieve)} µm`]),
    ...(how === 'jar' && !least ? ['with what it lets through'] : []),
    ...(seconds === undefined || seconds === 60 ? [] : [`${number(seconds)} seconds a pane`]),
  ].join(', ')

const lookWords = ({ how, counts }: { readonly how: Looked['how']; readonly counts: readonly number[] }): string =>
  `${capital(list(counts.map(number)))} counted${counts.length > 1 ? (how === 'jar' ? ', look by look' : ', pane by pane') : ''}`
export const hoursWords = (fact: SmallLifeCounted): string | undefined => {
  if (fact.looked.how !== 'torch') return undefined
  const { minutesDark } = fact.looked
  if (minutesDark === undefined) return 'How long it had been dark is not known.'
  if (minutesDark < 0) return 'The lamp was still on.'
  return `Dark for ${plural(minutesDark, 'minute', 'minutes')}.`
}
export const pointWords = ({ fact, density, torch, hours }: CountPoint, scale: Scale): readonly string[] => [
  `${lookWords({ how: fact.looked.how, counts: fact.counts })}${torch ? `, ${number(torch.median)} in the middle` : ''}.`,
  densityWords(density, scale),
  ...(density.is === 'about' && density.clumped ? [clumpedWords] : []),
  ...(hours
    ? [`${hoursWords(fact)}${hours === 'otherHour' ? ' Not the second hour of dark: not compared.' : ''}`]
    : []),
  ...(fact.words ? [`“${fact.words}”`] : []),
]

/** What the last count says beside an earlier one. */
export const changeWords = (change: CountChange, today: Day): string => {
  const { fact } = change.with
  const then = `${fact.looked.how === 'torch' ? 'the night of ' : ''}${dayWords(fact.night, today)}`
  if (change.is === 'otherHours')
    return `Not compared with ${then}: not both fell one to two hours after lights-out, and the hour alone makes a difference.`
  const { says } = change
  const clumps = says.clumped ? ' One of them lay in clumps, so take this lightly.' : ''
  if (says.is === 'noClearChange') return `No clear change since ${then}: chance alone differs as much.${clumps}`
  const range =
    says.ratio === undefined || says.high === undefined
      ? `at least ${times(says.low)} as many`
      : says.ratio === 0
        ? `none seen this time, and at most ${times(says.high)} as many`
        : `about ${times(says.ratio)} as many, between ${times(says.low)} and ${times(says.high)}`
  return `${says.is === 'more' ? 'More' : 'Fewer'} than on ${then}: ${range}.${clumps}`
}

/** "92 days since the pour, 41 feedings, three kinds seen." */
export const sinceWords = ({ days, daysSinceLast, first, last, feedings, kinds }: Since): string => {
  const again = last.at > first.at ? ` ${capital(daysWords(daysSinceLast))} since the last one.` : ''
  const which = last.at > first.at ? 'first pour' : 'pour'
  return `${capital(daysWords(days))} since the ${which}, ${plural(feedings, 'feeding', 'feedings')}, ${kindsWords(kinds)}.${again}`
}
const daysWords = (days: number): string => (days === 0 ? 'less than a day' : plural(days, 'day', 'days'))
export const kindsWords = (kinds: number): string => `${inWords(kinds)} ${kinds === 1 ? 'kind' : 'kinds'} seen`
export const answerWithoutPour = (counts: number, kinds: number): string =>
  counts + kinds === 0
    ? 'Nothing is written down of the small life yet.'
    : `${capital(plural(counts, 'count', 'counts'))}, ${kindsWords(kinds)}; no pour is written down.`

export const pourWords = ({ animals: what, pours }: Pour): string =>
  `${capital(list(what.map((each) => animalWords[each])) || 'live bottles')}: ${list(
    pours.map(({ into: place, bottles }) => `${plural(bottles, 'bottle', 'bottles')} into ${placeWords[place]}`),
  )}.`

export const reseedWords = (reseed: Reseed, reading: Reading): readonly string[] => {
  const enough =
    reseed.bottles === undefined
      ? ''
      : ` ${capital(inWords(reseed.bottles))} ${reseed.bottles === 1 ? 'bottle' : 'bottles'} would be as many as a first pour of this tank wants.`
  if (reseed.is === 'nothingPoured') return ['No pour is written down, so there is none to repeat.']
  if (reseed.is === 'noReason') return ['What is written down gives no reason to pour again.']
  return [
    ...reseed.reasons.map((reason) => reasonWords(reason, reading)),
    `Worth thinking of, and no promise that more would stay.${enough}`,
  ]
}
const reasonWords = (reason: ReseedReason, { today }: Reading): string => {
  switch (reason.why) {
    case 'falling':
      return `Three counts in a row have fallen: ${seriesTitle(reason.series).toLowerCase()}.`
    case 'podHunters':
      return `Fish that hunt pods have come since the last pour${reason.noted.what ? ` (${reasonText(reason.noted.what)})` : ''}.`
    case 'usualWeeks':
      return `Many pour a second time two to four weeks after the first: between ${dayWords(reason.from, today)} and ${dayWords(reason.to, today)}.`
  }
}

export const podEatersWords = (asked: PodEaters, { today }: Reading): readonly string[] => {
  const habit = 'Common practice, no source: four to eight weeks, and numbers that hold.'
  switch (asked.is) {
    case 'nothingPoured':
      return ['First the pour, then four to eight weeks of small life to itself.', habit]
    case 'already':
      return ['Fish that hunt pods live there already: a pane they can reach always shows too few.', habit]
    case 'tooSoon':
      return [`Not yet: not before ${onDay(asked.from, today)}, and many wait until ${onDay(asked.to, today)}.`, habit]
    case 'countFirst':
      return [
        `Old enough, but nobody can say that the numbers hold: ${inWords(asked.missing)} more ${asked.missing === 1 ? 'count' : 'counts'} of one spot, taken in one way, would tell.`,
        habit,
      ]
    case 'falling':
      return ['Better not yet: the last three counts have fallen.', habit]
    case 'mayCome':
      return [
        `It may come: the last three counts hold.${asked.to ? ` Many still wait until ${onDay(asked.to, today)}.` : ''}`,
        'Count again two weeks after it has come.',
        habit,
      ]
  }
}
const onDay = (day: Day, today: Day): string => `${weekday(day)}, ${dayWords(day, today)}`
/** "2 November, 22:15": where a count stands in a list. */
export const momentWords = (
  fact: { readonly at: SmallLifeCounted['at'] },
  day: Day,
  { zone, today }: Reading,
): string => `${dayWords(day, today)}, ${clock(fact.at, zone)}`
export const seenWords = (first: Day, last: Day, times: number): string =>
  times === 1
    ? dayInFull(first)
    : `${dayInFull(first)}; ${inWords(times)} times${last === first ? '' : `, last on ${dayInFull(last)}`}`

/** "9 in the middle, of 7 to 11." */
export const torchWords = ({ median, lowest, highest }: TorchCount): string =>
  lowest === highest
    ? `${number(median)} in each pane.`
    : `${number(median)} in the middle, of ${number(lowest)} to ${number(highest)}.`

/** How long it has been dark, before the light of a torch falls in. */
export const darkWords = (minutes: number | undefined): string => {
  if (minutes === undefined) return 'When the lamp went out is not known; a count is still a count.'
  if (minutes < 0)
    return `The lamp goes out in ${plural(-minutes, 'minute', 'minutes')}. One to two hours after that is the hour to count.`
  if (minutes < 60)
    return `Dark for ${plural(minutes, 'minute', 'minutes')}. Best from one hour after lights-out to two: sooner, it is not compared.`
  if (minutes <= 120) return `Dark for ${plural(minutes, 'minute', 'minutes')}: the right hour to count.`
  return `Dark for ${plural(minutes, 'minute', 'minutes')}. Over two hours: a count now is kept, and not compared.`
}

export const measureNames = {
  seconds: 'the seconds for each pane',
  frame: 'the square looked at, in square centimetres',
  litres: 'the litres through the sieve',
  rinsedInto: 'the millilitres they were rinsed into',
  lookedAt: 'the millilitres looked at each time',
  sieve: 'the sieve, in micrometres',
  kept: 'the share the sieve keeps, in per cent',
} as const

export type LifeRefusal = AnyRefusal | NumberRefusal | CountedRefusal | KindRefusal | { readonly why: 'dayIsNone' }

export const lifeRefusalText = (refusal: LifeRefusal, reading: Reading): string => {
  switch (refusal.why) {
    case 'nothingCounted':
      return 'At least one count, please. None seen is 0.'
    case 'countNotWhole':
      return 'A whole number: half an animal cannot be counted.'
    case 'countNegative':
      return 'Fewer than none cannot be seen. None is 0.'
    case 'countTooLarge':
      return `More than ${number(refusal.most)}? Look at the number again.`
    case 'lookOutOfRange':
      return `${capital(measureNames[refusal.of])}: above 0, and ${number(refusal.most * (refusal.of === 'kept' ? 100 : 1))} at most.`
    case 'lookedAtMoreThanRinsed':
      return `${number(refusal.inAll)} mL were looked at in all, and there were only ${number(refusal.rinsedInto)} mL. Look at the numbers again.`
    case 'wordsTooLong':
      return `That is longer than ${number(refusal.most)} letters.`
    case 'keyNotDone':
      return 'The questions are not at their end yet.'
    case 'dayIsNone':
      return 'On which day?'
    default:
      return refusalText(refusal, reading)
  }
}

/** What opens the list of them. */
export const everyCount = (counts: number): string =>
  counts === 1 ? 'The count itself' : `All ${inWords(counts)} counts`
