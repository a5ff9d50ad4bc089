/** What can be done to a night's line, and what was just done. */
import { useState } from 'react'
import {
  type BottleChangeRefusal,
  type BottleId,
  type CountRefusal,
  type DoseAsked,
  type DoseRefusal,
  doNotKnow,
  type Entry,
  type Fact,
  giveDose,
  type LotId,
  liquidGone,
  type NightRefusal,
  ok,
  type PlanId,
  portionsGone,
  type Serving,
  type StrikeRefusal,
  skipNight,
  strikeOut,
  type TonightLine,
} from '../../../core/index.ts'
import { buzz } from '../../state/haptic.ts'
import { useRequest } from '../../state/useRequest.ts'
import { useUndo } from '../../state/useUndo.ts'

export type ActRefusal = DoseRefusal | NightRefusal | StrikeRefusal | BottleChangeRefusal | CountRefusal
type Confirmed = Pick<DoseAsked, 'again' | 'sure' | 'why'>

export const sourceOf = ({ taken }: Serving): LotId | BottleId => (taken.from === 'portions' ? taken.lot : taken.bottle)

export const useDosing = () => {
  const { busy, refusal, send, reset } = useRequest<ActRefusal>()
  const undo = useUndo()
  const [acted, setActed] = useState<PlanId>()
  const [did, setDid] = useState<'dosed' | 'skipped' | 'unknown' | 'dropped'>()
  const [source, setSource] = useState<LotId | BottleId>()
  /** The dose a refusal is about, and what she has confirmed of it: it may be another one, and so much, and past its day. */
  const [asked, setAsked] = useState<{ readonly serving: Serving | undefined; readonly told: Confirmed }>()

  const after = (written: readonly Entry<Fact>[] | undefined, plan: PlanId, what: typeof did) => {
    if (!written || written.length === 0) return
    buzz()
    setActed(plan)
    setDid(what)
    // The next one comes from where she stands, if she dropped one there.
    if (what !== 'dropped') setSource(undefined)
    // The answer has changed, and it stands at the top.
    document.documentElement.scrollTop = 0
    undo.begin(written)
  }
  /** `serving` is what the screen showed; undefined: from something not on record. */
  const dosed = async ({ plan }: TonightLine, serving: Serving | undefined, confirmed: Confirmed = {}) => {
    setAsked({ serving, told: confirmed })
    const taken = serving ? [serving.taken] : []
    const amount = serving?.amount ?? plan.amount
    const written = await send((world, { now }) =>
      giveDose(world, { plan: plan.plan, taken, amount, at: now, ...confirmed }, now),
    )
    after(written, plan.plan, 'dosed')
  }
  return {
    busy,
    refusal,
    reset,
    undo,
    did,
    acted: undo.until === null ? undefined : acted,
    /** What she takes: the first in line, unless she picked another. */
    chosen: ({ servings }: TonightLine): Serving | undefined =>
      servings.find((serving) => sourceOf(serving) === source) ?? servings[0],
    take: (serving: Serving) => setSource(sourceOf(serving)),
    dosed,
    /** Asked about it, she says that it is so. */
    confirm: asked && ((line: TonightLine, more: Confirmed) => dosed(line, asked.serving, { ...asked.told, ...more })),
    skipped: async ({ plan }: TonightLine) => {
      setAsked(undefined)
      after(await send((world, { now }) => skipNight(world, { plan: plan.plan }, now)), plan.plan, 'skipped')
    },
    unknown: async ({ plan }: TonightLine) => {
      setAsked(undefined)
      after(await send((world, { now }) => doNotKnow(world, { plan: plan.plan }, now)), plan.plan, 'unknown')
    },
    /** Stock goes down, the night stays due. */
    dropped: async ({ plan }: TonightLine, { taken }: Serving) => {
      setAsked(undefined)
      const written = await send((world, { now }) =>
        taken.from === 'portions'
          ? portionsGone(world, { lot: taken.lot, count: 1, fate: 'lost', why: 'dropped' }, now)
          : liquidGone(world, { bottle: taken.bottle, amount: taken.amount, fate: 'lost', why: 'spilt' }, now),
      )
      after(written, plan.plan, 'dropped')
    },
    takeBack: async () => {
      setAsked(undefined)
      const targets = undo.targets
      const written = await send((world, { now }) => {
        const facts: Fact[] = []
        for (const target of targets) {
          const struck = strikeOut(world, { target, why: 'mistake' }, now)
          if (!struck.ok) return struck
          facts.push(...struck.value)
        }
        return ok(facts)
      })
      if (!written) return
      undo.end()
      setDid(undefined)
    },
  }
}

export type Dosing = ReturnType<typeof useDosing>
