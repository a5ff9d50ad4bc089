/** What Tonight says. */
import {
  type BottleId,
  type Day,
  type DeviceId,
  daysBetween,
  type Entry,
  type Fact,
  inPart,
  type Lasts,
  type Moment,
  type NightMark,
  outAlready,
  pastServings,
  phoneName,
  type Serving,
  type Shake,
  shareOfOne,
  sourcesOf,
  type Together,
  type TonightLine,
  type TrayNow,
  type World,
  writtenBy,
  type Zone,
} from '../../core/index.ts'
import { clock, dayWords, nightFrom, nightWords } from './dates.ts'
import { bottleName, bottleShort, lotName, placeName } from './names.ts'
import { about, capital, inWords, millilitres, number, plural, portions } from './numbers.ts'

const onePortion = (count: number): string => (count === 1 ? 'one portion' : `${inWords(count)} portions`)
const howMany = (serving: Serving, count: number): string =>
  inPart(serving) ? 'part of one portion' : onePortion(count)

/** "one portion from tray bag 3, kitchen freezer". */
export const takeWords = (serving: Serving, world: World, now: Moment): string => {
  const { taken } = serving
  if (taken.from === 'portions') {
    const place = world.lots.get(taken.lot)?.place
    return `${howMany(serving, taken.count)} from ${lotName(world, taken.lot)}${place ? `, ${placeName(world, place, now)}` : ''}`
  }
  const place = world.bottles.get(taken.bottle)?.place
  const bottle = world.foods.size === 1 ? bottleShort(world, taken.bottle) : bottleName(world, taken.bottle, now)
  return `${millilitres(taken.amount)} from ${bottle}${place ? `, ${placeName(world, place, now)}` : ''}`
}

/** "41 left after that, enough until 18 November." Where there is more elsewhere, the two figures are kept apart. */
const leftWords = (serving: Serving, lasting: Lasts | undefined, today: Day, others: number): string => {
  const portions = serving.taken.from === 'portions'
  const left =
    serving.left === 0
      ? 'The last of it'
      : serving.source.thawed
        ? 'Thawed: tonight or tomorrow night'
        : portions
          ? `${number(serving.left)} left after that`
          : `About ${about(serving.left / 1000)} mL of it left to use`
  if (!lasting?.lastNight) return `${left}.`
  const until = `enough until ${dayWords(lasting.lastNight, today)}`
  return others > 0 ? `${left}; with all the rest, ${until}.` : `${left}, ${until}.`
}

/** Who reads it, and when: a dose another phone noted is told by its name. */
export type Reader = { readonly world: World; readonly now: Moment; readonly thisPhone: DeviceId | undefined }

export const tonightAnswer = (line: TonightLine, reader: Reader, lasting: Lasts | undefined): string => {
  const { world, now } = reader
  const { state, night } = line
  // With one tank its name goes without saying.
  const where = world.tanks.size > 1 ? `, ${line.tank.name}` : ''
  switch (state.is) {
    case 'due': {
      const [serving] = line.servings
      if (!serving) {
        const past = pastServings(sourcesOf(world, line.food.food, now), line.plan.amount, night).length > 0
        return `A dose is due tonight${where}; ${past ? 'all there is has passed its usual day' : 'nothing usable is left'}.`
      }
      const others = sourcesOf(world, line.food.food, now).length - 1
      return `Tonight${where}: ${takeWords(serving, world, now)}. ${leftWords(serving, lasting, night, others)}`
    }
    case 'done':
      return `Done for ${nightWords(night)}${where}: ${givenWords(state.marks, line, reader)}. Next: ${nightFrom(state.next, night)}.`
    case 'skipped':
      return `Skipped ${nightWords(night)}${where}. Next: ${nightFrom(state.next, night)}.`
    case 'unknown':
      return `Not known for ${nightWords(night)}${where}; less is safe. Next: ${nightFrom(state.next, night)}.`
    case 'held':
      return `On hold until ${nightFrom(state.until, night)}${where}.`
    case 'resting':
      return `Nothing tonight${where}. Next dose: ${nightFrom(state.next, night)}.`
  }
}

/** Undefined for what this phone noted itself, or while it does not know its own name. */
export const otherPhone = (entry: NightMark['entry'], { world, now, thisPhone }: Reader): string | undefined => {
  const phone = writtenBy(entry)
  if (thisPhone === undefined || phone === thisPhone) return undefined
  return phoneName(world, phone, now) ?? 'another phone'
}

const givenWords = (marks: readonly NightMark[], { tank }: TonightLine, reader: Reader): string =>
  marks
    .filter(({ what }) => what === 'given')
    .map(({ amount, at, entry }) => {
      const other = otherPhone(entry, reader)
      return `${millilitres(amount)} at ${clock(at, tank.zone)}${other ? `, ${other}` : ''}`
    })
    .join('; ')

/** Which of several doses is put right: "Noted last: 1 mL at 20:00." */
export const lastNotedWords = ({ amount, at }: NightMark, zone: Zone): string =>
  `Noted last: ${millilitres(amount)} at ${clock(at, zone)}.`

/**
 * Under the answer, where a night went by: no scolding, and never a doubled amount. Since when is left out where that night
 * is asked about above.
 */
export const sinceWords = (since: Day, night: Day, asked: boolean): string => {
  const usual = 'Give the usual amount, no more: the small life grazes what is there for days.'
  return asked ? usual : `Due since ${nightFrom(since, night)}. ${usual}`
}

/** For the other lines of the evening: a tank, its food and how it stands. */
export const lineWords = (line: TonightLine, reader: Reader): string => {
  const { world, now } = reader
  const { state, night } = line
  switch (state.is) {
    case 'due':
      return line.servings[0] ? `due: ${takeWords(line.servings[0], world, now)}` : 'due; nothing usable is left'
    case 'done':
      return `done: ${givenWords(state.marks, line, reader)}; next ${nightFrom(state.next, night)}`
    case 'skipped':
      return `skipped; next ${nightFrom(state.next, night)}`
    case 'unknown':
      return `not known; next ${nightFrom(state.next, night)}`
    case 'held':
      return `on hold until ${nightFrom(state.until, night)}`
    case 'resting':
      return `next ${nightFrom(state.next, night)}`
  }
}

/** "Two foods tonight for Long Gallery: 1.5 mL in all." */
export const togetherWords = ({ tank, lines, amount }: Together): string =>
  `${capital(inWords(lines.length))} foods tonight for ${tank.name}: ${millilitres(amount)} in all.`

/** "Two days past its usual time: sniff and look." */
export const pastWords = ({ source }: Serving, night: Day): string => {
  const days = source.lastGood === undefined ? 0 : daysBetween(source.lastGood, night)
  return `${plainDays(days)} past its usual time: sniff and look.`
}
const plainDays = (days: number): string => (days === 1 ? 'One day' : `${capital(inWords(days))} days`)

export type Did =
  | 'dosed'
  | 'skipped'
  | 'unknown'
  | 'dropped'
  | 'answered'
  | 'moved'
  | 'putBack'
  | 'chosen'
  | 'goesOn'
  | 'held'
  | 'emptied'
const didWords: Record<Did, string> = {
  dosed: 'Noted: dosed.',
  skipped: 'Noted: skipped.',
  unknown: 'Noted: not known.',
  dropped: 'Noted: dropped. Tonight is still due.',
  answered: 'Noted for those nights.',
  moved: 'Noted: the other tank.',
  putBack: 'Noted: put back. Tonight is still due.',
  chosen: 'Noted.',
  goesOn: 'Noted: it goes on.',
  held: 'Noted: on hold.',
  emptied: 'Noted: the bottle is empty.',
}

/** Said with the undo; an answer for several nights also says why it took less than it gave. */
export const saysWords = (did: Did, written: readonly Entry<Fact>[], world: World): string =>
  did === 'answered' && written.some(({ fact }) => fact.kind === 'doseGiven' && outAlready(world, fact))
    ? `${didWords[did]} What was out already when it was counted is not taken again.`
    : didWords[did]

/** On the large button. */
export const actSub = (serving: Serving, line: TonightLine): string =>
  serving.taken.from === 'portions'
    ? `${howMany(serving, serving.taken.count)}, ${millilitres(serving.amount)}, for ${line.tank.name}`
    : `${millilitres(serving.amount)} for ${line.tank.name}`

/** "about 3/8 of the cup": nobody has measured the cup, so millilitres of it would say nothing. */
const pourWords = ({ amount, source }: Serving): string => {
  const { parts, of } = shareOfOne(amount, source.from === 'portions' ? source.each : amount)
  return of === 1 ? 'all of it' : `about ${parts}/${of} of the cup`
}

/** Where portions do not come to the plan, and what to do about it. */
export const unlikePlanWords = (serving: Serving, plan: number): string | undefined => {
  if (serving.taken.from === 'bottle') return undefined
  if (inPart(serving))
    return `A portion is more than your plan of ${millilitres(plan)}. Melt it in a cup of tank water and give ${pourWords(serving)}; the rest may go to another tank tonight, and is never frozen again.`
  if (serving.amount === plan) return undefined
  return `${capital(onePortion(serving.taken.count))} ${serving.taken.count === 1 ? 'is' : 'are'} ${millilitres(serving.amount)}; your plan is ${millilitres(plan)}.`
}

export const lightsWords = (line: TonightLine): string =>
  line.dark
    ? `The lights went out at ${clock(line.lightsOut, line.tank.zone)}.`
    : `The lights go out at ${clock(line.lightsOut, line.tank.zone)}.`

export const shakeWords = ({ bottle, hours, shaken }: Shake, long: number, world: World, now: Moment): string => {
  const name = bottleName(world, bottle.id, now)
  const ago = `${inWords(hours)} ${hours === 1 ? 'hour' : 'hours'}`
  if (shaken) return `${capital(name)} was shaken ${hours === 0 ? 'just now' : `${ago} ago`}.`
  if (bottle.shakenAt === undefined) return `Shake ${name}: food settles.`
  return hours >= long
    ? `Shake ${name} long, then look: ${inWords(Math.floor(hours / 24))} days since the last time.`
    : `Shake ${name}: ${ago} since the last time.`
}

/** The tray for those who cannot see it. */
export const trayWords = ({ rows, columns, holds }: TrayNow): string =>
  `A tray of ${rows} by ${columns} wells with ${portions(holds)} in it.`

/** "39 portions in the open tray, tray 2." One tray alone needs no number. */
export const openTrayWords = ({ tray, holds }: TrayNow, open: boolean, trays: number): string =>
  `${portions(holds)} in the ${open ? 'open' : 'next'} tray${trays > 1 ? `, tray ${tray + 1}` : ''}.`

/** "Freeze what is left of the 120 mL bottle by 5 March: 3 more days." */
export const freezeSoonWords = (
  bottle: BottleId,
  until: Day,
  days: number,
  world: World,
  now: Moment,
  today: Day,
): string => {
  const name = bottleName(world, bottle, now)
  if (days === 0) return `Today is the last day to freeze what is left of ${name}.`
  return `Freeze what is left of ${name} by ${dayWords(until, today)}, in ${plural(days, 'day', 'days')}, or use it up.`
}
