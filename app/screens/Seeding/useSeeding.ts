/** What the forms of live bottles share: one request at a time, and all that is wrong said at once, each beside its field. */
import {
  type Entry,
  type Fact,
  type Moment,
  ok,
  type Result,
  refuse,
  strikeOut,
  type World,
} from '../../../core/index.ts'
import { fromStorage, useRequest } from '../../state/useRequest.ts'
import { type SeedingFieldRefusal, seedingRefusal } from '../../words/seedingRefusals.ts'
import type { Reading } from '../useReading.ts'

/** `at` names the field; empty where it concerns the whole form. */
export type Trouble = { readonly at: string; readonly refusal: SeedingFieldRefusal }
type Wrong = { readonly why: 'wrong'; readonly all: readonly Trouble[] }
export type SeedingAsk = (world: World, context: { readonly now: Moment }) => Result<readonly Fact[], Wrong>

export const wrong = (all: readonly Trouble[]) => refuse<Wrong>({ why: 'wrong', all })
/** A core refusal beside the field that `at` names for it. */
export const placed = <Value, Refusal extends SeedingFieldRefusal>(
  result: Result<Value, Refusal>,
  at: (refusal: Refusal) => string = () => '',
): Result<Value, Wrong> => (result.ok ? ok(result.value) : wrong([{ at: at(result.refusal), refusal: result.refusal }]))

export type Seeding = {
  readonly busy: boolean
  readonly send: (ask: SeedingAsk) => Promise<readonly Entry<Fact>[] | undefined>
  readonly reset: () => void
  /** Which rule stands in the way, if one does. */
  readonly whys: readonly SeedingFieldRefusal['why'][]
  /** The sentence for a field, if it is at fault. */
  readonly wrong: (field: string) => string | undefined
}

export const useSeeding = (reading: Reading): Seeding => {
  const { busy, refusal, send, reset } = useRequest<Wrong>()
  const all: readonly Trouble[] =
    refusal === undefined ? [] : fromStorage(refusal) ? [{ at: '', refusal }] : refusal.all
  return {
    busy,
    send,
    reset,
    whys: all.map((each) => each.refusal.why),
    wrong: (field) => {
      const found = all.find(({ at }) => at === field)
      return found && seedingRefusal(found.refusal, reading)
    },
  }
}

/** Takes back what was written: crossed out, all of it or none. */
export const crossOut =
  (written: readonly Pick<Entry<Fact>, 'id'>[]): SeedingAsk =>
  (world, { now }) => {
    const facts: Fact[] = []
    for (const { id: target } of written) {
      const struck = strikeOut(world, { target, why: 'mistake' }, now)
      if (!struck.ok) return wrong([{ at: '', refusal: struck.refusal }])
      facts.push(...struck.value)
    }
    return ok(facts)
  }
