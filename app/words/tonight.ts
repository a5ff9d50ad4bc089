/** What Tonight says. */
import type {
  Day,
  Lasts,
  Moment,
  NightMark,
  Serving,
  Shake,
  TonightLine,
  TrayNow,
  World,
  Zone,
} from '../../core/index.ts'
import { clock, dayWords, nightFrom, nightWords } from './dates.ts'
import { bottleName, bottleShort, lotName, placeName } from './names.ts'
import { about, capital, inWords, millilitres, number, portions } from './numbers.ts'

const onePortion = (count: number): string => (count === 1 ? 'one portion' : `${inWords(count)} portions`)

/** "one portion from tray bag 3, kitchen freezer". */
export const takeWords = ({ taken }: Serving, world: World, now: Moment): string => {
  if (taken.from === 'portions') {
    const place = world.lots.get(taken.lot)?.made.place
    return `${onePortion(taken.count)} from ${lotName(world, taken.lot)}${place ? `, ${placeName(world, place, now)}` : ''}`
  }
  const place = world.bottles.get(taken.bottle)?.recorded.place
  const bottle = world.foods.size === 1 ? bottleShort(world, taken.bottle) : bottleName(world, taken.bottle, now)
  return `${millilitres(taken.amount)} from ${bottle}${place ? `, ${placeName(world, place, now)}` : ''}`
}

/** "41 left after that, enough until 18 November." */
const leftWords = (serving: Serving, lasting: Lasts | undefined, today: Day): string => {
  const last = serving.left === 0 ? 'The last of it' : undefined
  const left = serving.taken.from === 'portions' ? number(serving.left) : `About ${about(serving.left / 1000)} mL`
  const until = lasting?.lastNight ? `enough until ${dayWords(lasting.lastNight, today)}` : undefined
  return `${[last ?? `${left} left after that`, until].filter(Boolean).join(', ')}.`
}

export const tonightAnswer = (line: TonightLine, world: World, now: Moment, lasting: Lasts | undefined): string => {
  const { state, night } = line
  switch (state.is) {
    case 'due': {
      const [serving] = line.servings
      if (!serving) return 'A dose is due tonight, but there is nothing usable left.'
      return `Tonight: ${takeWords(serving, world, now)}. ${leftWords(serving, lasting, night)}`
    }
    case 'done':
      return `Done for ${nightWords(night)}: ${givenWords(state.marks, line.tank.zone)}. Next: ${nightFrom(state.next, night)}.`
    case 'skipped':
      return `Skipped ${nightWords(night)}. Next: ${nightFrom(state.next, night)}.`
    case 'unknown':
      return `Not known for ${nightWords(night)}; less is safe. Next: ${nightFrom(state.next, night)}.`
    case 'resting':
      return `Nothing tonight. Next dose: ${nightFrom(state.next, night)}.`
  }
}

const givenWords = (marks: readonly NightMark[], zone: Zone): string =>
  marks
    .filter(({ what }) => what === 'given')
    .map(({ amount, at }) => `${millilitres(amount)} at ${clock(at, zone)}`)
    .join(', ')

/** Under the answer, where a night went by: no scolding, and never a doubled amount. */
export const sinceWords = (since: Day, night: Day): string =>
  `Due since ${nightFrom(since, night)}. Give the usual amount, no more: the small life grazes what is there for days.`

/** For the other lines of the evening: a tank, its food and how it stands. */
export const lineWords = (line: TonightLine, world: World, now: Moment): string => {
  const { state, night } = line
  switch (state.is) {
    case 'due':
      return line.servings[0] ? `due: ${takeWords(line.servings[0], world, now)}` : 'due, but nothing usable is left'
    case 'done':
      return `done: ${givenWords(state.marks, line.tank.zone)}; next ${nightFrom(state.next, night)}`
    case 'skipped':
      return `skipped; next ${nightFrom(state.next, night)}`
    case 'unknown':
      return `not known; next ${nightFrom(state.next, night)}`
    case 'resting':
      return `next ${nightFrom(state.next, night)}`
  }
}

/** On the large button. */
export const actSub = (serving: Serving, line: TonightLine): string =>
  serving.taken.from === 'portions'
    ? `${onePortion(serving.taken.count)}, ${millilitres(serving.amount)}, for ${line.tank.name}`
    : `${millilitres(serving.amount)} for ${line.tank.name}`

/** Where whole portions come to more or less than the plan. */
export const unlikePlanWords = (serving: Serving, plan: number): string | undefined =>
  serving.amount === plan || serving.taken.from === 'bottle'
    ? undefined
    : `${capital(onePortion(serving.taken.count))} ${serving.taken.count === 1 ? 'is' : 'are'} ${millilitres(serving.amount)}; your plan is ${millilitres(plan)}.`

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
