/** The dose nights gone by of which nothing is known. They are asked about until somebody answers, or no one can. */
import { byText } from '../basis/compare.ts'
import { addDays, type Day, daysBetween } from '../basis/days.ts'
import type { PlanId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import type { FoodState } from '../food/state.ts'
import type { TankDescribed } from '../tank/facts.ts'
import { lightsOutOf, nightOf, type TankState, tankAt } from '../tank/state.ts'
import { fixedFrom, usualAfter } from './due.ts'
import type { PlanMade } from './facts.ts'
import { type DosingState, goesOnSince, holdsOf, marksOf, planAt } from './state.ts'

type State = TankState & FoodState & DosingState

/** More nights than two years of every evening are nobody's holiday; a walk must end. */
const mostNights = 800

/** Between two nights that are known, nobody remembers longer than this. Our own judgement. */
const rememberedDays = 60

/** Oldest first. None from before the plan was made, or made again, none on hold, and none she has answered for. */
export const openNights = (state: State, plan: PlanMade, now: Moment): readonly Day[] => {
  const tank = tankAt(state, plan.tank, now)
  if (!tank) return []
  const tonight = nightOf(now, tank)
  const begun = nightOf(goesOnSince(state, plan, now), tank)
  const nights: Day[] = []
  let until = tonight
  // From tonight back, one gap after the other. What is noted for tonight answers for tonight alone.
  for (const last of knownBack(state, plan.plan, tonight)) {
    nights.unshift(...gap(state, plan, { last, until, tonight, begun, tank, now }))
    until = last
  }
  if (until > addDays(tonight, -rememberedDays))
    nights.unshift(...gap(state, plan, { last: undefined, until, tonight, begun, tank, now }))
  return nights
}

/** The nights before tonight that something is known of, newest first, to the one beyond which nobody remembers. */
const knownBack = ({ nights }: DosingState, plan: PlanId, tonight: Day): readonly Day[] => {
  const oldest = addDays(tonight, -rememberedDays)
  const known: Day[] = []
  let before: Day | undefined
  for (const night of nights.get(plan)?.keys() ?? []) {
    if (night > oldest && night < tonight) known.push(night)
    else if (night <= oldest && (before === undefined || night > before)) before = night
  }
  known.sort((a, b) => byText(b, a))
  return before === undefined ? known : [...known, before]
}

type Gap = {
  readonly last: Day | undefined
  readonly until: Day
  readonly tonight: Day
  /** The night since which the plan goes on. */
  readonly begun: Day
  readonly tank: TankDescribed
  readonly now: Moment
}

const gap = (state: State, plan: PlanMade, { last, until, tonight, begun, tank, now }: Gap): readonly Day[] => {
  // From the last dose, as it mostly is: so close together there is no dose night between the two.
  if (last !== undefined && !plan.rhythm && daysBetween(last, until) <= plan.everyNights && madeOnce(state, plan))
    return []
  // A count settles the nights it was made for: it is kept as the last of them.
  if (until < tonight && marksOf(state, plan.plan, until).some(({ what }) => what === 'counted')) return []
  const rhythm = until < tonight ? rhythmIn(state, plan, last ?? until, until, tank) : plan
  if (!rhythm) return []
  const owed = usualAfter(state, rhythm, last)
  if (owed >= until) return []
  // A first night of another century is a slip of the finger, and is not walked up from.
  const rounds = Math.max(0, Math.ceil(daysBetween(owed, begun) / rhythm.everyNights))
  const nights: Day[] = []
  let night = addDays(owed, rounds * rhythm.everyNights)
  while (night < until && nights.length < mostNights) {
    const free = heldFrom(state, plan.plan, night, tank, now)
    if (free !== undefined) {
      night = rhythm.rhythm === 'fixedNights' ? fixedFrom(rhythm, free) : free
      continue
    }
    if (!saidMissed(state, plan.plan, night)) nights.push(night)
    night = addDays(night, rhythm.everyNights)
  }
  return nights
}

/** The rhythm of nights long past; undefined where it changed between them, for then nobody knows which were dose nights. */
const rhythmIn = (
  state: DosingState,
  { plan }: PlanMade,
  from: Day,
  to: Day,
  tank: TankDescribed,
): PlanMade | undefined => {
  // Most plans are made once; asking for the lamp of each old evening would cost more than all the rest.
  const [only, ...more] = state.plans.get(plan) ?? []
  if (only && more.length === 0) return only
  const before = planAt(state, plan, lightsOutOf(from, tank))
  const after = planAt(state, plan, lightsOutOf(to, tank))
  if (!before || !after) return undefined
  const same =
    before.everyNights === after.everyNights &&
    before.rhythm === after.rhythm &&
    (before.rhythm === undefined || before.firstNight === after.firstNight)
  return same ? after : undefined
}

const madeOnce = ({ plans }: DosingState, { plan }: PlanMade): boolean => plans.get(plan)?.length === 1

/** The first night that a hold which lay on this one no longer holds; undefined where none lay on it. */
const heldFrom = (state: DosingState, plan: PlanId, night: Day, tank: TankDescribed, now: Moment): Day | undefined => {
  const holds = holdsOf(state, plan, now).map(({ at, until }) => ({ since: nightOf(at, tank), until }))
  const at = holds.findLastIndex(({ since }) => since <= night)
  const held = holds[at]
  if (!held || held.until <= night) return undefined
  // Said anew before it ended: from that night on the later word holds.
  const next = holds[at + 1]?.since
  return next !== undefined && next < held.until ? next : held.until
}

export const saidMissed = ({ missed }: DosingState, plan: PlanId, night: Day): boolean =>
  missed.get(plan)?.some(({ from, to }) => from <= night && night <= to) ?? false
