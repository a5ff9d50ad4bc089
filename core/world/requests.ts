/** Crossing out, and settling a question. */

import type { BottleId, LotId, PlanId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { EntryStruckOut } from '../ledger/entry.ts'
import type { History } from '../ledger/history.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { Fact, QuestionSettled } from './facts.ts'

export type StrikeRefusal =
  | { readonly why: 'noSuchEntry' }
  | { readonly why: 'alreadyCrossedOut' }
  | { readonly why: 'isCrossingOut' }

/** The entry stays, readable, with who crossed it out, when and why; everything is reckoned again without it. */
export const strikeOut = (
  { history }: { readonly history: History<Fact> },
  { target, why }: { readonly target: Stamp; readonly why?: string },
  now: Moment,
): Result<readonly [EntryStruckOut], StrikeRefusal> => {
  const entry = history.all.find(({ id }) => id === target)
  if (!entry) return refuse({ why: 'noSuchEntry' })
  if (entry.fact.kind === 'entryStruckOut') return refuse({ why: 'isCrossingOut' })
  if (history.struck.has(target)) return refuse({ why: 'alreadyCrossedOut' })
  return ok([{ kind: 'entryStruckOut', at: now, target, ...(why ? { why } : {}) }])
}

/** It is as it stands: both doses happened, the count is right. */
export const settleQuestion = (question: string, now: Moment): readonly [QuestionSettled] => [
  { kind: 'questionSettled', at: now, question, answer: 'asItStands' },
]

const makes = (fact: Fact): PlanId | BottleId | LotId | undefined => {
  switch (fact.kind) {
    case 'planMade':
      return fact.plan
    case 'bottleRecorded':
      return fact.bottle
    case 'portionsFrozen':
    case 'portionsOnHand':
    case 'portionsMoved':
      return fact.lot
  }
  return undefined
}
/** The last crossed-out entry that a missing plan, bottle or lot came from; undefined where it never was on this phone. */
export const crossedOutOrigin = ({ all, struck }: History<Fact>, thing: PlanId | BottleId | LotId): Stamp | undefined =>
  all.findLast(({ id, fact }) => makes(fact) === thing && struck.has(id))?.id

export type AgainRefusal = { readonly why: 'noSuchEntry' | 'isCrossingOut' }

/**
 * What was crossed out is written again as it was, under an id of its own: a crossing-out cannot be taken back, and later
 * entries may lean on what it hid.
 */
export const writeAgain = (
  { history }: { readonly history: History<Fact> },
  target: Stamp,
): Result<readonly [Fact], AgainRefusal> => {
  const entry = history.all.find(({ id }) => id === target)
  if (!entry || !history.struck.has(target)) return refuse({ why: 'noSuchEntry' })
  return entry.fact.kind === 'entryStruckOut' ? refuse({ why: 'isCrossingOut' }) : ok([entry.fact])
}
