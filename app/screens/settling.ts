/** The ways to settle each question: look again, mend what caused it, or say that it is as it stands. */
import {
  type AmendRefusal,
  type ClashRefusal,
  type CountRefusal,
  type Entry,
  type Fact,
  type Oddity,
  ok,
  portionsFound,
  type Stamp,
  type StrikeRefusal,
  settleClash,
  settleQuestion,
  strikeOut,
  takeUp,
} from '../../core/index.ts'
import type { Ask } from '../state/store.ts'
import { number } from '../words/numbers.ts'

export type SettleRefusal = StrikeRefusal | CountRefusal | AmendRefusal | ClashRefusal
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

/** The bottle held more than the book knew. */
const takings = (entries: readonly Entry<Fact>[]): readonly Way[] =>
  entries.map(({ id }) => ({
    label: 'The bottle held more: it is empty now',
    ask: (world, { now }) => takeUp(world, { entry: id, how: { is: 'bottleHeldMore' } }, now),
  }))

/** @param entries in the order they happened */
export const waysOf = (oddity: Oddity, entries: readonly Entry<Fact>[]): readonly Way[] => {
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
      return [crossOut('A slip: cross it out', ids), ...takings(entries)]
    case 'twoBodies': {
      const { clash } = oddity
      const settle = (right: 'ours' | 'theirs'): Way => ({
        label: right === 'ours' ? 'What this phone says' : 'What the other said',
        ask: (world, { now }) => settleClash(world, { clash, right }, now),
      })
      return [settle('ours'), settle('theirs'), asItStands(oddity, 'Leave it as it stands')]
    }
    case 'newerEntries':
      return [{ label: 'Look for an update', href: '#/phone' }, asItStands(oddity, 'Leave it for now')]
    case 'aheadOfItsWriting':
      return [crossOut('Cross it out', ids), asItStands(oddity, 'The day is right')]
    case 'unknownStock':
    case 'unknownPlan':
      return [
        { label: 'Take in the other phone’s backup', href: '#/phone' },
        asItStands(oddity, 'Leave it as it stands'),
      ]
  }
}
