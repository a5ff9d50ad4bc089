/** What a nudge says, what is answered to it, and what This phone says about nudges. Short: it is read by red light. */
import {
  type Entry,
  type Fact,
  type Moment,
  type Nudge,
  nightOf,
  nudgeDelay,
  type TonightLine,
  tankAt,
  type World,
  wallDay,
  type Zone,
} from '../../core/index.ts'
import type { NudgeStanding, Offer, Telling } from '../reminders/channel.ts'
import type { Dosed } from '../reminders/dosed.ts'
import { clock, nightFrom } from './dates.ts'
import { capital, millilitres } from './numbers.ts'
import { refusalText } from './refusals.ts'
import { takeWords } from './tonight.ts'

/** "One portion from tray bag 3, kitchen freezer." With two foods each by its name. */
const takeOf = (line: TonightLine, among: number, world: World, now: Moment): string[] => {
  const [serving] = line.servings
  if (!serving) return []
  const take = takeWords(serving, world, now)
  return [among === 1 ? `${capital(take)}.` : `${line.food.name}: ${take}.`]
}

/** The planned minute stands in the words: not every phone shows one, and a late nudge shows another. */
export const nudgeWords = ({ key, tank, night, lines, plannedAt }: Nudge, world: World, now: Moment): Telling => {
  const doses = lines.flatMap(({ plan, servings: [serving] }) =>
    serving ? [{ plan: plan.plan, taken: [serving.taken], amount: serving.amount }] : [],
  )
  const offer: Offer = { kind: 'offer', tank: tank.tank, night, doses }
  const takes = lines.flatMap((line) => takeOf(line, lines.length, world, now))
  return {
    key,
    title: `${tank.name}, ${nightFrom(night, nightOf(now, tank))}`,
    body: `${takes.join(' ')} Planned for ${clock(plannedAt, tank.zone)}.`,
    offer,
  }
}

/** What takes the nudge's place once it is answered. */
export const dosedWords = (key: string, { tank: id }: Offer, { world, at, done }: Dosed): Telling => {
  const tank = tankAt(world, id, at)
  const noted = (amount: string): Telling => ({
    key,
    title: 'Noted',
    body: `Dosed ${amount}${tank ? ` for ${tank.name}` : ''}. Undo is in the app.`,
    quiet: true,
  })
  if (done.ok) return noted(amounts(done.value))
  // A second touch in the same moment: what it says must not hide what the first one did.
  if (done.refusal.why === 'justRecorded') return noted(millilitres(done.refusal.mark.amount))
  // Without its tank there is no calendar to speak by, and no refusal that speaks of one.
  const zone = tank?.zone ?? ('UTC' as Zone)
  const reading = { zone, today: tank ? nightOf(at, tank) : wallDay(at, zone) }
  if (done.refusal.why === 'alreadyGiven')
    return { key, title: 'Noted already', body: refusalText(done.refusal, reading), quiet: true }
  const why = done.refusal.why === 'nightIsOver' ? 'That night is over by now.' : refusalText(done.refusal, reading)
  return { key, title: 'Not noted', body: `${why} Touch this to open Smallhours.` }
}

const amounts = (written: readonly Entry<Fact>[]): string =>
  written
    .flatMap(({ fact }) => (fact.kind === 'doseGiven' ? fact.served.map(({ amount }) => millilitres(amount)) : []))
    .join(' and ')

/** "Next: Saturday night at 21:20." */
export const nextNudgeText = (next: Nudge | undefined, world: World, now: Moment): string => {
  if (!next) return 'Nothing is planned that would need one.'
  const { tank, night, plannedAt } = next
  const whose = world.tanks.size > 1 ? `, ${tank.name}` : ''
  return `Next: ${nightFrom(night, nightOf(now, tank))} at ${clock(plannedAt, tank.zone)}${whose}.`
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
/** True of every browser there is, so it is said whatever the state. */
export const closedText = `While Smallhours is closed this phone will not nudge. To be sure, ${ownAlarm} as well.`

/** What stands in the way; undefined where nothing does. */
export const standingText = (standing: NudgeStanding): string | undefined => {
  switch (standing) {
    case 'unsupported':
      return `This browser cannot show nudges here: ${ownAlarm}. On an iPhone only an app on the Home Screen may show them.`
    case 'denied':
      return `Nudges are off: this browser was told not to show any from Smallhours. Allow notifications for this site in the browser’s settings, then choose Yes here. Or ${ownAlarm}.`
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
