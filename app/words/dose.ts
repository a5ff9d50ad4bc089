/** What is asked about a dose before it is noted, and what the exact form says. */
import {
  type AmountRefusal,
  type Day,
  type DoseRefusal,
  type Keeping,
  type Moment,
  phoneName,
  type Source,
  sniffDays,
  type World,
} from '../../core/index.ts'
import { clock, dayWords, nightFrom, nightWords } from './dates.ts'
import { bottleName, keepingWords, lotName, placeName, tankName } from './names.ts'
import { capital, millilitres, portions } from './numbers.ts'
import type { Reading } from './reading.ts'
import { refusalText } from './refusals.ts'
import { otherPhone, type Reader } from './tonight.ts'
import { asideWords, sniffWords } from './trouble.ts'

/** As a question where it is one: "Kitchen phone noted 1 mL at 21:31. Another?" */
export const doseRefusalText = (refusal: DoseRefusal, reader: Reader, reading: Reading): string => {
  if (refusal.why === 'alreadyGiven') {
    const { mark, tank, night } = refusal
    const who = otherPhone(mark.entry, reader)
    const where = reader.world.tanks.size > 1 ? ` for ${tankName(reader.world, tank, reader.now)}` : ''
    const what = `${millilitres(mark.amount)}${where} at ${clock(mark.at, reading.zone)}`
    const when = night === reading.today ? '' : `, ${nightFrom(night, reading.today)}`
    return who ? `${capital(who)} noted ${what}${when}. Another?` : `${what} is noted already${when}. Another?`
  }
  if (refusal.why === 'farAboveRange') return `${millilitres(refusal.asked)}? ${refusalText(refusal, reading)}`
  if (refusal.why === 'pastItsDay' && refusal.days > sniffDays)
    return `${refusalText(refusal, reading)} That is long past.`
  if (refusal.why === 'fromAside') {
    const sniff = refusal.sniff ? ` Last smelt at: ${sniffWords(refusal.sniff, reading)}` : ''
    return `${capital(asideWords(refusal.aside, reading))}.${sniff} Was it given all the same?`
  }
  return refusalText(refusal, reading)
}

/** Under what may be noted all the same: that it will show, and by whom. */
export const willBearWords = ({ world, now, thisPhone }: Reader): string => {
  const name = thisPhone && phoneName(world, thisPhone, now)
  return `The diary will say so beside the entry, noted on ${name ?? 'this phone'}.`
}

/** What is missing or cannot be read in the exact form. */
export type WrongInForm = AmountRefusal | { readonly why: 'howMany' | 'whichTank' | 'whichSource' | 'whenMissing' }

export const doseWrongText = (refusal: WrongInForm, reading: Reading): string => {
  switch (refusal.why) {
    case 'howMany':
      return 'How many?'
    case 'whichTank':
      return 'Which tank was it?'
    case 'whichSource':
      return 'Where did it come from?'
    case 'whenMissing':
      return 'When was it? About is good enough.'
    case 'notPositive':
      return refusalText({ why: 'nothingGiven' }, reading)
    default:
      return refusalText(refusal, reading)
  }
}

/** "Tray bag 3, kitchen freezer". */
export const sourceName = (source: Source, world: World, now: Moment): string => {
  const place = source.from === 'portions' ? world.lots.get(source.lot)?.place : world.bottles.get(source.bottle)?.place
  const name = source.from === 'portions' ? lotName(world, source.lot) : bottleName(world, source.bottle, now)
  return capital(`${name}${place ? `, ${placeName(world, place, now)}` : ''}`)
}

/** "41 portions of 1 mL, good until 18 November": past ones say so. */
export const sourceHint = (source: Source, keeping: Keeping, reading: Reading): string => {
  const left =
    source.from === 'bottle'
      ? `${millilitres(source.left)} to use`
      : source.left > 0
        ? `${portions(source.left)} of ${millilitres(source.each)}`
        : 'none left by the book'
  return `${left}; ${keepingWords(keeping, source.lastGood, reading)}`
}

/** "That is Saturday night, 14 August." */
export const thatNightWords = (night: Day, tonight: Day): string =>
  night === tonight ? 'That is tonight.' : `That is ${nightWords(night)}, ${dayWords(night, tonight)}.`
