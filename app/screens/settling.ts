/** The ways to settle each question: look again, mend what caused it, or say that it is as it stands. */
import {
  type AgainRefusal,
  type AmendRefusal,
  type BottleId,
  bottlesThatHold,
  type ClashRefusal,
  type CountRefusal,
  crossedOutOrigin,
  type Entry,
  endPlan,
  type Fact,
  type HowItWas,
  type LotId,
  type Moment,
  type Oddity,
  ok,
  type PlanId,
  portionsFound,
  type Stamp,
  type StrikeRefusal,
  settleClash,
  settleQuestion,
  slipsOf,
  strikeOut,
  takeUp,
  theirsOf,
  type World,
  writeAgain,
} from '../../core/index.ts'
import type { Ask } from '../state/store.ts'
import { bottleName } from '../words/names.ts'
import { millilitres, number } from '../words/numbers.ts'

export type SettleRefusal =
  | StrikeRefusal
  | CountRefusal
  | AmendRefusal
  | ClashRefusal
  | AgainRefusal
  | { readonly why: 'noSuchPlan' }
export type Way = { readonly label: string } & ({ readonly href: string } | { readonly ask: Ask<SettleRefusal> })

const asItStands = ({ key }: Oddity, label: string): Way => ({
  label,
  ask: (_world, { now }) => ok(settleQuestion(key, now)),
})
const crossOut = (label: string, targets: readonly Stamp[]): Way => ({
  label,
  ask: (world, { now }) => {
    const facts: Fact[] = []
    for (const target of targets) {
      const struck = strikeOut(world, { target }, now)
      if (!struck.ok) return struck
      facts.push(...struck.value)
    }
    return ok(facts)
  },
})

const endPlans = (label: string, made: readonly Entry<Fact>[]): Way => ({
  label,
  ask: (world, { now }) => {
    const facts: Fact[] = []
    for (const { fact } of made) {
      const ended = fact.kind === 'planMade' ? endPlan(world, { plan: fact.plan }, now) : undefined
      if (ended && !ended.ok) return ended
      facts.push(...(ended?.value ?? []))
    }
    return ok(facts)
  },
})

/** How a dose set aside may have been. */
const takings = (world: World, now: Moment, { id, fact }: Entry<Fact>): readonly Way[] => {
  if (fact.kind !== 'doseSetAside') return []
  const as = (how: HowItWas, label: string): Way => ({
    label,
    ask: (current, asked) => takeUp(current, { entry: id, how }, asked.now),
  })
  return [
    ...slipsOf(world, fact).map((amount) => as({ is: 'amount', amount }, `It was ${millilitres(amount)}`)),
    ...bottlesThatHold(world, fact).map((bottle) =>
      as({ is: 'fromAnother', bottle }, `It came from ${bottleName(world, bottle, now)}`),
    ),
    as({ is: 'bottleHeldMore' }, 'The bottle held more: it is empty now'),
  ]
}

/** Crossed out, it can be written again as it was; what never was here may come with a file. */
const bringBack = (world: World, thing: PlanId | BottleId | LotId, label: string): Way => {
  const origin = crossedOutOrigin(world.history, thing)
  return origin === undefined
    ? { label: 'Take in the other phone’s backup', href: '#/phone' }
    : { label, ask: (current) => writeAgain(current, origin) }
}

/** @param entries in the order they happened */
export const waysOf = (
  oddity: Oddity,
  entries: readonly Entry<Fact>[],
  { world, now }: { readonly world: World; readonly now: Moment },
): readonly Way[] => {
  const ids = entries.map(({ id }) => id)
  switch (oddity.what) {
    case 'loggedTwice':
      return ids.length === 2
        ? [
            crossOut('One dose: cross out the later one', ids.slice(1)),
            crossOut('One dose: cross out the earlier one', ids.slice(0, 1)),
            asItStands(oddity, 'Both happened'),
          ]
        : [crossOut('One dose: keep the first alone', ids.slice(1)), asItStands(oddity, 'All of them happened')]
    case 'trayEmptierThanBook': {
      const { lot, short } = oddity
      return [
        { label: 'Count it', href: `#/food/lot/${lot}` },
        {
          label: `I found ${number(short)} more`,
          ask: (world, { now }) => portionsFound(world, { lot, count: short }, now),
        },
        asItStands(oddity, 'It is as it stands'),
      ]
    }
    case 'bottleEmptierThanBook':
      return [
        { label: 'Measure what is left', href: `#/food/bottle/${oddity.bottle}` },
        asItStands(oddity, 'It is as it stands'),
      ]
    case 'countGapMoved':
      return [
        oddity.of === 'portions'
          ? { label: 'Count again', href: `#/food/lot/${oddity.thing}` }
          : { label: 'Measure again', href: `#/food/bottle/${oddity.thing}` },
        asItStands(oddity, 'It is still right'),
      ]
    case 'doseSetAside':
      return [
        crossOut('A slip: cross it out', ids),
        ...entries.flatMap((entry) => takings(world, now, entry)),
        asItStands(oddity, 'Leave it so: nothing comes off the stock'),
      ]
    case 'twoBodies': {
      const { clash } = oddity
      const readable = theirBody(world, clash) !== undefined
      const settle = (right: 'ours' | 'theirs'): Way => ({
        label: right === 'ours' ? 'What this phone says' : 'What the other said',
        ask: (world, { now }) => settleClash(world, { clash, right }, now),
      })
      return [
        ...(entries.length > 0 ? [settle('ours')] : []),
        ...(entries.length > 0 && readable ? [settle('theirs')] : []),
        asItStands(oddity, 'Leave it as it stands'),
      ]
    }
    case 'twoPlans':
      return [
        endPlans('Keep the later one alone', entries.slice(0, -1)),
        ...(entries.length === 2 ? [endPlans('Keep the earlier one alone', entries.slice(1))] : []),
        asItStands(oddity, 'Both are meant'),
      ]
    case 'newerEntries':
      return [{ label: 'Look for an update', href: '#/phone' }, asItStands(oddity, 'Leave it for now')]
    case 'aheadOfItsWriting':
      return [crossOut('Cross it out', ids), asItStands(oddity, 'The day is right')]
    case 'unknownStock':
      return [
        bringBack(world, oddity.thing, 'It was there: put it back on record'),
        asItStands(oddity, 'Leave it as it stands'),
      ]
    case 'unknownPlan':
      return [bringBack(world, oddity.plan, 'Make the plan again'), asItStands(oddity, 'Leave it as it stands')]
  }
}

/** What the other phone wrote, if this version reads it. */
export const theirBody = ({ history }: World, clash: Stamp): Fact | undefined => {
  const noted = history.all.find(({ id }) => id === clash)?.fact
  return noted?.kind === 'clashNoted' ? theirsOf(noted) : undefined
}
