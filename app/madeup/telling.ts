/** A story becomes entries: each step is asked of the book as it stands then, and written down at once. */
import {
  addDays,
  clockMinutes,
  type Day,
  type DeviceId,
  type Entry,
  type Fact,
  fold,
  isClockTime,
  type Moment,
  momentAt,
  nextStamp,
  type Result,
  type Stamp,
  type World,
  type Zone,
} from '../../core/index.ts'

/** So many days before the last, at a time of that day's clock: what was asked of the world of then. */
export type Step = readonly [
  before: number,
  clock: string,
  ask: (world: World, now: Moment) => Result<readonly Fact[], unknown>,
]

export const told = (steps: readonly Step[], last: Day, zone: Zone, device: DeviceId): readonly Entry<Fact>[] => {
  const entries: Entry<Fact>[] = []
  let latest: Stamp | undefined
  for (const [before, clock, ask] of [...steps].sort(inOrder)) {
    if (!isClockTime(clock)) throw new Error(`${clock} is no time`)
    const now = momentAt(addDays(last, -before), clockMinutes(clock), zone)
    for (const fact of done(ask(fold(entries), now))) {
      latest = nextStamp(latest, now, device)
      entries.push({ id: latest, fact })
    }
  }
  return entries
}

/** Steps of the same minute keep the order they were told in. */
const inOrder = ([beforeA, clockA]: Step, [beforeB, clockB]: Step): number =>
  beforeB - beforeA || (clockA < clockB ? -1 : clockA > clockB ? 1 : 0)

/** A story is told by us: a step that is refused is a fault of ours. */
export const done = <Value>(asked: Result<Value, unknown>): Value => {
  if (!asked.ok) throw new Error(`The story was refused: ${JSON.stringify(asked.refusal)}`)
  return asked.value
}
