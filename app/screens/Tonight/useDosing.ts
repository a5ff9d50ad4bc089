/** What can be done to a night's line, and what was just done. */
import { useState } from 'react'
import {
  type BottleChangeRefusal,
  type BottleId,
  type ChoiceRefusal,
  type CountRefusal,
  comesFrom,
  type DoseAsked,
  type DoseRefusal,
  doNotKnow,
  type Entry,
  type Fact,
  giveShared,
  type HoldRefusal,
  type LotId,
  liquidGone,
  type Microlitres,
  moveDose,
  type NightRefusal,
  type NightsCountRefusal,
  type OtherTankRefusal,
  ok,
  type PlanId,
  partFor,
  portionsGone,
  type RoundRefusal,
  type Serving,
  type Stamp,
  type StrikeRefusal,
  skipNight,
  strikeOut,
  type Taken,
  type TankId,
  type TonightLine,
  writeAgain,
} from '../../../core/index.ts'
import { buzz } from '../../state/haptic.ts'
import type { Ask } from '../../state/store.ts'
import { useRequest } from '../../state/useRequest.ts'
import { useUndo } from '../../state/useUndo.ts'
import type { Did } from '../../words/tonight.ts'

export type ActRefusal =
  | DoseRefusal
  | NightRefusal
  | StrikeRefusal
  | OtherTankRefusal
  | BottleChangeRefusal
  | CountRefusal
  | RoundRefusal
  | NightsCountRefusal
  | HoldRefusal
  | ChoiceRefusal
export type Confirmed = Pick<DoseAsked, 'again' | 'sure' | 'aside' | 'heldMore' | 'asideIsFine' | 'why'>

/** What was taken and what reached the tank; of a shared portion, where the rest went. */
export type Dose = {
  readonly taken: readonly Taken[]
  readonly amount: Microlitres
  readonly shared?: { readonly tank: TankId; readonly amount: Microlitres }
}
/** A dose noted for a line's tank that went into another. */
export type Move = { readonly entry: Stamp; readonly to: TankId }
/** `plan` is the line it was done to; `back` takes it back where crossing out is not enough. */
type Done = { readonly plan?: PlanId; readonly did: Did; readonly back?: Back }
type Back = (written: readonly Entry<Fact>[]) => Ask<ActRefusal>

const crossOut: Back =
  (written) =>
  (world, { now }) => {
    const facts: Fact[] = []
    for (const { id: target } of written) {
      const struck = strikeOut(world, { target, why: 'mistake' }, now)
      if (!struck.ok) return struck
      facts.push(...struck.value)
    }
    return ok(facts)
  }

/** A crossing-out cannot be crossed out: what stood before is written again. */
const moveBack =
  ({ entry }: Move): Back =>
  (written) =>
  (world, context) => {
    const struck = crossOut(written.slice(-1))(world, context)
    const again = writeAgain(world, entry)
    return struck.ok && again.ok ? ok([...struck.value, ...again.value]) : struck.ok ? again : struck
  }

const none: readonly Entry<Fact>[] = []

export const useDosing = () => {
  const { busy, refusal, send, reset } = useRequest<ActRefusal>()
  const undo = useUndo()
  const [last, setLast] = useState<Done & { readonly written: readonly Entry<Fact>[] }>()
  const [front, setFront] = useState<PlanId>()
  const [source, setSource] = useState<LotId | BottleId>()
  /** The dose a refusal is about, and what she has confirmed of it: it may be another one, and so much, and past its day. */
  const [asked, setAsked] = useState<{ readonly about: Dose | Move; readonly told: Confirmed }>()

  const write = async (ask: Ask<ActRefusal>, done: Done) => {
    const written = await send(ask)
    if (!written || written.length === 0) return
    buzz()
    setLast({ ...done, written })
    setFront(undefined)
    // The next one comes from where she stands, if she dropped one there.
    if (done.did !== 'dropped') setSource(undefined)
    // The answer has changed, and it stands at the top.
    document.documentElement.scrollTop = 0
    undo.begin()
  }
  const record = (ask: Ask<ActRefusal>, done: Done): Promise<void> => {
    setAsked(undefined)
    return write(ask, done)
  }
  const give = ({ plan: { plan, tank, food } }: TonightLine, dose: Dose, told: Confirmed = {}): Promise<void> => {
    setAsked({ about: dose, told })
    const { taken, amount, shared } = dose
    const part = { tank, plan, amount }
    return write(
      (world, { now }) => {
        const parts = shared ? [part, partFor(world, shared.tank, food, shared.amount, now)] : [part]
        return giveShared(world, { food, parts, taken, at: now, aside: false, ...told }, now)
      },
      { plan, did: 'dosed' },
    )
  }
  const moved = ({ plan: { plan, tank: from } }: TonightLine, move: Move, told: Confirmed = {}): Promise<void> => {
    setAsked({ about: move, told })
    return write((world, { now }) => moveDose(world, { ...move, from, ...told }, now), {
      plan,
      did: 'moved',
      back: moveBack(move),
    })
  }
  const acted = undo.until === null ? undefined : last
  return {
    busy,
    refusal,
    reset,
    undo,
    did: last?.did,
    written: last?.written ?? none,
    /** The line that stands in front whatever else is due: the one just acted on, while it can be taken back. */
    front: acted?.plan ?? front,
    bring: (plan: PlanId) => {
      undo.end()
      reset()
      setFront(plan)
      document.documentElement.scrollTop = 0
    },
    /** What she takes: the first in line, unless she picked another. */
    chosen: ({ servings }: TonightLine): Serving | undefined =>
      servings.find((serving) => comesFrom(serving.taken) === source) ?? servings[0],
    take: (serving: Serving) => setSource(comesFrom(serving.taken)),
    record,
    give,
    moved,
    /** What the screen showed; undefined: from something not on record. */
    dosed: (line: TonightLine, serving: Serving | undefined, told: Confirmed = {}) =>
      give(line, { taken: serving ? [serving.taken] : [], amount: serving?.amount ?? line.plan.amount }, told),
    /** Asked about it, she says that it is so, or how it was. */
    confirm:
      asked &&
      ((line: TonightLine, more: Confirmed, about = asked.about) => {
        const told = { ...asked.told, ...more }
        return 'entry' in about ? moved(line, about, told) : give(line, about, told)
      }),
    dose: asked && 'taken' in asked.about ? asked.about : undefined,
    skipped: ({ plan: { plan } }: TonightLine) =>
      record((world, { now }) => skipNight(world, { plan }, now), { plan, did: 'skipped' }),
    unknown: ({ plan: { plan } }: TonightLine) =>
      record((world, { now }) => doNotKnow(world, { plan }, now), { plan, did: 'unknown' }),
    /** Stock goes down, the night stays due. */
    dropped: ({ plan: { plan } }: TonightLine, { taken }: Serving) =>
      record(
        (world, { now }) =>
          taken.from === 'portions'
            ? portionsGone(world, { lot: taken.lot, count: 1, fate: 'lost', why: 'dropped' }, now)
            : liquidGone(world, { bottle: taken.bottle, amount: taken.amount, fate: 'lost', why: 'spilt' }, now),
        { plan, did: 'dropped' },
      ),
    takeBack: async () => {
      setAsked(undefined)
      if (!last) return
      const { back = crossOut, written } = last
      if (!(await send(back(written)))) return
      undo.end()
      setLast(undefined)
    },
  }
}

export type Dosing = ReturnType<typeof useDosing>
