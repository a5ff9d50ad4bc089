/**
 * What deserves a nudge at a moment, and when the next one is. What was shown before is told, not remembered. One an evening
 * for everything, unless she wants them apart; shaking comes at an hour of its own.
 */
import type { Day } from '../basis/days.ts'
import type { TankId } from '../basis/ids.ts'
import { clockMinutes, type Moment, moment, momentAt, wallDay, type Zone } from '../basis/zones.ts'
import type { TonightLine } from '../dosing/tonight.ts'
import { type Shake, shakes } from '../food/shaking.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { tanksAt } from '../tank/state.ts'
import { isCalm } from './calm.ts'
import { doseKey, mayShow, nextTankNight, type State, type TankNight, tankNight } from './doses.ts'
import { type Notice, noticesOf, type Phone, type Told } from './notices.ts'
import { type MorningNudge, morningNudges, type PumpsNudge, pumpNudges } from './runs.ts'
import { afterQuiet, type Wishes } from './wishes.ts'

type Claims = readonly [string, ...string[]]

export type EveningNudge = {
  readonly is: 'evening'
  readonly key: string
  /** Its own name, and those of all it says: none of them is said again. */
  readonly claims: Claims
  readonly night: Day
  readonly plannedAt: Moment
  readonly zone: Zone
  /** Those with a dose due. */
  readonly tanks: readonly TankDescribed[]
  readonly lines: readonly TonightLine[]
  readonly notices: readonly Notice[]
  /** All has been well for a month: a word less will do. */
  readonly calm: boolean
}
export type ShakeNudge = {
  readonly is: 'shake'
  readonly key: string
  readonly claims: Claims
  readonly plannedAt: Moment
  readonly zone: Zone
  readonly shakes: readonly Shake[]
}
export type Nudge = EveningNudge | ShakeNudge | PumpsNudge | MorningNudge

export type Asked = {
  readonly shown: ReadonlySet<string>
  readonly wishes: Wishes
  readonly phone: Phone
}

const eveningKey = (night: Day, zone: Zone): string => `evening/${night}/${zone}`
/** Together or apart: whoever changes her mind in the evening is not nudged twice. */
const wasShown =
  (shown: ReadonlySet<string>, zone: Zone) =>
  (tank: TankId, night: Day): boolean =>
    shown.has(doseKey(tank, night)) || shown.has(eveningKey(night, zone))

/** What deserves one now, in the order it was planned. Where nothing is left to take, the night is left in peace. */
export const nudges = (state: Told, now: Moment, asked: Asked): readonly Nudge[] => [
  // A tank without flow comes before everything.
  ...pumpNudges(state, now, asked.shown),
  ...[...evenings(state, now, asked), ...shaking(state, now, asked), ...morningNudges(state, now, asked.shown)].sort(
    (a, b) => a.plannedAt - b.plannedAt,
  ),
]

const evenings = (state: Told, now: Moment, { shown, wishes, phone }: Asked): readonly EveningNudge[] => {
  const said = new Set(shown)
  const all: EveningNudge[] = []
  for (const group of groups(state, now, wishes)) {
    const [first] = group
    if (!first) continue
    const { night, tank } = first
    const { zone } = tank
    const shownFor = wasShown(shown, zone)
    const open = group.filter((one) => !shownFor(one.tank.tank, night))
    const due = open.filter(({ lines }) => lines.length > 0)
    // Together they wait for the last lamp: what is said of a tank is said after its own lights-out.
    const plannedAt = latest(due.length > 0 ? due : open)
    if (plannedAt === undefined || !mayShow(plannedAt, now, wishes)) continue
    const notices = noticesOf(state, now, wishes, phone).filter(({ key }) => !said.has(key))
    const lines = due.flatMap((one) => one.lines)
    if (lines.length === 0 && notices.length === 0) continue
    const key = wishes.split ? doseKey(tank.tank, night) : eveningKey(night, zone)
    const carried = [...due.map((one) => doseKey(one.tank.tank, night)), ...notices.map((notice) => notice.key)]
    for (const claim of [key, ...carried]) said.add(claim)
    all.push({
      is: 'evening',
      key,
      claims: [key, ...carried.filter((claim) => claim !== key)],
      night,
      plannedAt,
      zone,
      tanks: due.map((one) => one.tank),
      lines,
      notices,
      calm: isCalm(state, lines, now),
    })
  }
  return all
}
const latest = (nights: readonly TankNight[]): Moment | undefined =>
  nights.length === 0 ? undefined : moment(Math.max(...nights.map(({ plannedAt }) => plannedAt)))

/** Tanks whose night this is together: all of a zone, or each for itself. */
const groups = (state: State, now: Moment, wishes: Wishes): readonly (readonly TankNight[])[] => {
  const all = tanksAt(state, now).map((tank) => tankNight(state, tank, now, wishes))
  if (wishes.split) return all.map((one) => [one])
  const together = new Map<string, TankNight[]>()
  for (const one of all) {
    const key = eveningKey(one.night, one.tank.zone)
    together.set(key, [...(together.get(key) ?? []), one])
  }
  return [...together.values()]
}

const shakeKey = (day: Day): string => `shake/${day}`
const shakeMoment = (day: Day, { shakeAt, zone }: Wishes): Moment | undefined =>
  shakeAt && momentAt(day, clockMinutes(shakeAt), zone)

/** At her own hour, and only while a bottle wants it. */
const shaking = (state: State, now: Moment, { shown, wishes }: Asked): readonly ShakeNudge[] => {
  const day = wallDay(now, wishes.zone)
  const plannedAt = shakeMoment(day, wishes)
  const key = shakeKey(day)
  if (plannedAt === undefined || shown.has(key) || !mayShow(plannedAt, now, wishes)) return []
  const wanted = shakes(state, now).filter(({ shaken }) => !shaken)
  return wanted.length > 0 ? [{ is: 'shake', key, claims: [key], plannedAt, zone: wishes.zone, shakes: wanted }] : []
}

export type NextNight = {
  readonly night: Day
  /** When it can be shown: its minute, or the end of the quiet hours. */
  readonly plannedAt: Moment
  readonly tanks: readonly TankDescribed[]
}

/** The next dose night that will deserve one, if nothing is written down meanwhile. */
export const nextNudge = (
  state: State,
  now: Moment,
  { shown, wishes }: Omit<Asked, 'phone'>,
): NextNight | undefined => {
  const coming = tanksAt(state, now).flatMap(
    (tank) => nextTankNight(state, tank, now, { shown: wasShown(shown, tank.zone), wishes }) ?? [],
  )
  const [first] = [...coming].sort((a, b) => a.plannedAt - b.plannedAt)
  if (!first) return undefined
  const together = wishes.split
    ? [first]
    : coming.filter(({ night, tank }) => night === first.night && tank.zone === first.tank.zone)
  const plannedAt = afterQuiet(latest(together) ?? first.plannedAt, wishes)
  return { night: first.night, plannedAt, tanks: together.map(({ tank }) => tank) }
}

/** When she is next to be reminded of shaking, if a bottle still wants it by then. */
export const nextShaking = (now: Moment, wishes: Wishes): Moment | undefined => {
  const today = shakeMoment(wallDay(now, wishes.zone), wishes)
  return today !== undefined && today > now ? today : undefined
}

/** The tanks whose minute has come tonight, and for which a dose is still due: what a mark on the app's icon counts. */
export const tanksDue = (state: State, now: Moment, wishes: Wishes): readonly TankDescribed[] =>
  tanksAt(state, now).flatMap((tank) => {
    const { lines, plannedAt } = tankNight(state, tank, now, wishes)
    return lines.length > 0 && now >= plannedAt ? [tank] : []
  })
