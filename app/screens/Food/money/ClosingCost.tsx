/** What a dose from a bottle truly cost, and whose it was. */
import {
  type Account,
  bottleCost,
  type Cost,
  costByTank,
  nightCost,
  plansAt,
  yearOfDoses,
} from '../../../../core/index.ts'
import { Facts } from '../../../parts/Facts.tsx'
import { Section } from '../../../parts/Section.tsx'
import { cost as costText, price, yearCost } from '../../../words/money.ts'
import { tankName } from '../../../words/names.ts'
import { nights } from '../../../words/numbers.ts'
import type { Reading } from '../../useReading.ts'

type ClosingCostProps = { readonly account: Account; readonly cost: Cost; readonly reading: Reading }

export const ClosingCost = ({ account, cost, reading: { world, now } }: ClosingCostProps) => {
  const { bottle } = account
  const paid = bottleCost(world, bottle, now)
  const plans = plansAt(world, now).filter(({ food }) => food === bottle.recorded.food)
  const [only] = plans.length === 1 ? plans : []
  const night = nightCost(account, cost)
  const tanks = typeof cost === 'object' ? [...costByTank(account, cost)] : []
  const facts = [
    { term: 'Paid for it', fact: paid === 'notKnown' ? 'not known' : price(paid) },
    {
      term: 'A dose cost',
      fact: costText(cost),
      note: typeof cost === 'object' ? 'Over the doses given and those that still can be.' : undefined,
    },
    ...(typeof night === 'object' && typeof cost === 'object' && costText(night) !== costText(cost)
      ? [{ term: 'A night cost', fact: costText(night) }]
      : []),
    ...(only && typeof cost === 'object'
      ? [
          {
            term: 'A year of it',
            fact: yearCost(yearOfDoses(cost, only.everyNights)),
            note: only.everyNights === 1 ? 'A dose every night.' : `A dose every ${nights(only.everyNights)}.`,
          },
        ]
      : []),
    ...(tanks.length > 1 && typeof cost === 'object'
      ? tanks.map(([tank, minor]) => ({
          term: tank ? `To ${tankName(world, tank, now)}` : 'To a tank not known',
          fact: price({ minor, currency: cost.currency }),
        }))
      : []),
  ]
  return (
    <Section title="What it cost">
      <Facts facts={facts} />
    </Section>
  )
}
