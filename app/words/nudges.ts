/** What a nudge says, what is answered to it, and what This phone says about nudges. Short: it is read by red light. */
import {
  type ClockTime,
  type Day,
  type Entry,
  type EveningNudge,
  type Fact,
  type Moment,
  type MorningNudge,
  type NextNight,
  type Notice,
  type Nudge,
  nightOf,
  nudgeDelay,
  type PumpsNudge,
  type ShakeNudge,
  type TankId,
  type TonightLine,
  tankAt,
  tonight,
  type World,
  wallDay,
  type Zone,
} from '../../core/index.ts'
import { type NudgeStanding, type Offer, runTags, type Telling } from '../reminders/channel.ts'
import type { Dosed } from '../reminders/dosed.ts'
import { clock, dayWords, nightFrom } from './dates.ts'
import { changeText, duration } from './lamp.ts'
import { list } from './list.ts'
import { bottleName, foodName, lotName, tankName } from './names.ts'
import { capital, millilitres, portions } from './numbers.ts'
import { hasItComeWords, orderByWords } from './ordering.ts'
import { refusalText } from './refusals.ts'
import { takeWords } from './tonight.ts'

/** "One portion from tray bag 3, kitchen freezer." With two foods or tanks each by its name. */
const takeOf = (line: TonightLine, names: readonly string[], world: World, now: Moment): string[] => {
  const [serving] = line.servings
  if (!serving) return []
  const take = takeWords(serving, world, now)
  return [names.length === 0 ? `${capital(take)}.` : `${names.join(', ')}: ${take}.`]
}

/** The planned minute stands in the words: not every phone shows one, and a late nudge shows another. */
const eveningWords = (nudge: EveningNudge, world: World, now: Moment): Telling => {
  const { key, tanks, night, lines, plannedAt, zone, notices, calm } = nudge
  const doses = lines.flatMap(({ plan, servings: [serving] }) =>
    serving ? [{ plan: plan.plan, taken: [serving.taken], amount: serving.amount }] : [],
  )
  const foods = new Set(lines.map(({ food }) => food.food))
  const takes = lines.flatMap((line) => {
    const names = [...(tanks.length > 1 ? [line.tank.name] : []), ...(foods.size > 1 ? [line.food.name] : [])]
    return takeOf(line, names, world, now)
  })
  const [first] = tanks
  // By the day at the tank, after midnight too: the nudge is about a night, a notice about a day.
  const today = wallDay(now, zone)
  const said = notices.map((notice) => noticeWords(notice, world, now, today))
  const when = first ? nightFrom(night, nightOf(now, first)) : ''
  return {
    key,
    title: first ? `${list(tanks.map(({ name }) => name))}, ${when}` : 'Smallhours',
    tanks: tanks.map(({ tank }) => tank),
    body: [...takes, ...(calm ? [] : [`Planned for ${clock(plannedAt, zone)}.`]), ...said].join(' '),
    ...(first ? { offer: { kind: 'offer', night, tanks: tanks.map(({ tank }) => tank), doses } } : {}),
    ...(first ? {} : { quiet: true }),
  }
}

const shakeNudgeWords = ({ key, shakes }: ShakeNudge, world: World, now: Moment): Telling => ({
  key,
  title: 'Shake',
  body: `${capital(list(shakes.map(({ bottle }) => bottleName(world, bottle.id, now))))}.`,
})

/** One name on the glass for all of a run's: the later one takes the place of the one before. */
const runNudgeWords = (nudge: PumpsNudge | MorningNudge): Telling =>
  nudge.is === 'pumps'
    ? {
        key: runTags.pumps(nudge.run),
        title: `${nudge.tank.name}: switch the pumps on`,
        body: `The hour is over${nudge.late > 0 ? ` for ${duration(nudge.late)}` : ''}. No flow means no oxygen, and the display is not heated.`,
        loud: true,
        opens: `/seeding/run/${nudge.run}`,
      }
    : {
        key: runTags.morning(nudge.run),
        title: `${nudge.tank.name}: still off since last night`,
        body: 'Look at the level first, then switch back on what is off.',
        opens: `/seeding/run/${nudge.run}`,
      }

export const nudgeWords = (nudge: Nudge, world: World, now: Moment): Telling =>
  nudge.is === 'evening'
    ? eveningWords(nudge, world, now)
    : nudge.is === 'shake'
      ? shakeNudgeWords(nudge, world, now)
      : runNudgeWords(nudge)

/** What else there is to say of an evening, in a sentence. */
export const noticeWords = (notice: Notice, world: World, now: Moment, today: Day): string => {
  switch (notice.about) {
    case 'freezeBy':
      return `Freeze ${bottleName(world, notice.bottle, now)} by ${dayWords(notice.until, today)}: about ${millilitres(notice.unused)} won’t get used in time.`
    case 'useSoon':
      return `${capital(lotName(world, notice.lot))} is good until ${dayWords(notice.until, today)}: ${portions(notice.unused)} won’t get used in time.`
    case 'orderBy': {
      const { food, orderBy: day, bareNight } = notice
      return orderByWords(foodName(world, food, now), { day, bareNight }, today)
    }
    case 'hasItCome':
      return hasItComeWords(foodName(world, notice.food, now), notice.comes, today)
    case 'clocks':
      return `${world.tanks.size > 1 ? `${notice.ask.tank.name}: ` : ''}${changeText(notice.ask)}`
    case 'backup':
      return 'The last backup is more than a month old: save one under This phone.'
    case 'calendarEnds':
      return `The nights in your calendar end on ${dayWords(notice.until, today)}: take a new file under This phone.`
  }
}

/** What is true of tonight, for a call from outside that must show something: it never asks for a dose twice. */
export const statusWords = (world: World, now: Moment): Telling => {
  const lines = tonight(world, now)
  const named = (is: TonightLine['state']['is']) => [
    ...new Set(lines.flatMap(({ state, tank }) => (state.is === is ? [tank.name] : []))),
  ]
  const [due, given] = [named('due'), named('done')]
  const said = [
    ...(due.length > 0 ? [`Due tonight: ${list(due)}.`] : []),
    ...(given.length > 0 ? [`Done for tonight: ${list(given)}.`] : []),
  ]
  return {
    key: 'status',
    title: 'Smallhours',
    body: said.length > 0 ? said.join(' ') : 'Nothing is due tonight.',
    quiet: true,
  }
}
/** The book could not be read, and something must be shown all the same. */
export const unreadWords: Telling = {
  key: 'status',
  title: 'Smallhours',
  body: 'The book could not be read just now. Touch this to see what is due tonight.',
  quiet: true,
}

/** What takes the nudge's place once it is answered. */
export const dosedWords = (key: string, { tanks }: Offer, { world, at, done }: Dosed): Telling => {
  const [tank] = tanks.flatMap((id) => tankAt(world, id, at) ?? [])
  const noted = (dosed: readonly string[]): Telling => ({
    key,
    title: 'Noted',
    body: `Dosed ${list(dosed)}. Undo is in the app.`,
    quiet: true,
  })
  if (done.ok) return noted(amounts(done.value, world, at))
  // A second touch in the same moment: what it says must not hide what the first one did.
  if (done.refusal.why === 'justRecorded') {
    const { amount } = done.refusal.mark
    return noted([tanks.length === 1 && tank ? `${millilitres(amount)} for ${tank.name}` : millilitres(amount)])
  }
  // Without its tank there is no calendar to speak by, and no refusal that speaks of one.
  const zone = tank?.zone ?? ('UTC' as Zone)
  const reading = { zone, today: tank ? nightOf(at, tank) : wallDay(at, zone) }
  if (done.refusal.why === 'alreadyGiven')
    return { key, title: 'Noted already', body: refusalText(done.refusal, reading), quiet: true }
  const why = done.refusal.why === 'nightIsOver' ? 'That night is over by now.' : refusalText(done.refusal, reading)
  return { key, title: 'Not noted', body: `${why} Touch this to open Smallhours.`, tanks }
}

/** "1 mL for Long Gallery"; two foods for one tank are told apart by their amounts. */
const amounts = (written: readonly Entry<Fact>[], world: World, at: Moment): readonly string[] => {
  const byTank = new Map<TankId, string[]>()
  for (const { fact } of written)
    if (fact.kind === 'doseGiven')
      for (const { tank, amount } of fact.served) byTank.set(tank, [...(byTank.get(tank) ?? []), millilitres(amount)])
  return [...byTank].map(([tank, all]) => `${list(all)} for ${tankName(world, tank, at)}`)
}

/** "Next: Saturday night at 21:20." */
export const nextNudgeText = (next: NextNight | undefined, world: World, now: Moment): string => {
  const [tank] = next?.tanks ?? []
  if (!next || !tank) return 'Nothing is planned that would need one.'
  const whose = world.tanks.size > 1 ? `, ${list(next.tanks.map(({ name }) => name))}` : ''
  return `Next: ${nightFrom(next.night, nightOf(now, tank))} at ${clock(next.plannedAt, tank.zone)}${whose}.`
}

export const trialWords: Telling = {
  key: 'trial',
  title: 'Smallhours',
  body: 'This is how a nudge arrives. Nothing is due because of it.',
}

export const nudgeChoices = [
  { value: 'off', label: 'No' },
  {
    value: 'on',
    label: 'Yes, while Smallhours is open',
    hint: `${nudgeDelay} minutes after lights-out, on a dose night that is not noted yet`,
  },
] as const

const ownAlarm = 'set an alarm in this phone’s own clock'
/** What stands in the way; undefined where nothing does. */
export const standingText = (standing: NudgeStanding): string | undefined => {
  switch (standing) {
    case 'unsupported':
      return `This browser cannot show nudges here: ${ownAlarm}. On an iPhone only an app on the Home Screen may show them.`
    case 'denied':
      return `Nudges are off: this browser was told not to show any from Smallhours. Allow notifications for this site in the browser’s settings, then choose Yes here. The calendar file below needs no leave; or ${ownAlarm}.`
    case 'lost':
      return 'Nudges are off: the browser no longer allows them. Choose Yes once more and it will ask you.'
    case 'off':
    case 'on':
      return undefined
  }
}

export const triedText = (shown: boolean): string =>
  shown
    ? 'Sent. If nothing shows, this phone is set to show nothing now.'
    : 'Not ready yet. Close Smallhours, open it again and try once more.'

export const whenChoices = [
  { value: 'afterLightsOut', label: `${nudgeDelay} minutes after lights-out` },
  { value: 'beforeBed', label: 'Before I go to bed', hint: 'where the lamp goes out later than that' },
] as const
export const quietChoices = [
  { value: 'none', label: 'None' },
  { value: 'some', label: 'Show nothing between two times', hint: 'what still helps is shown when they are over' },
] as const
export const shakeChoices = [
  { value: 'no', label: 'No reminder' },
  { value: 'at', label: 'At an hour of its own', hint: 'only while a bottle with food in it wants it' },
] as const
export const splitChoices = [
  { value: 'together', label: 'One nudge for all', hint: 'after the last of their lamps' },
  { value: 'apart', label: 'One for each tank' },
] as const

/** Where a field begins. Our own judgement. */
export const usualHours = {
  quiet: { from: '22:30' as ClockTime, until: '07:00' as ClockTime },
  shake: '18:00' as ClockTime,
}
