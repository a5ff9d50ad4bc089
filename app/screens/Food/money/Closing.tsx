/** The closing sheet of a bottle: how many nights it fed, what a dose truly cost, where every drop went. */
import { type BottleId, closing, doseCost, doseToFreeze, wallDay } from '../../../../core/index.ts'
import { Facts } from '../../../parts/Facts.tsx'
import { Page } from '../../../parts/Page.tsx'
import { Section } from '../../../parts/Section.tsx'
import {
  closingAnswer,
  daysWords,
  exactly,
  lossAmount,
  lossWords,
  reachedWords,
  sheetLines,
} from '../../../words/closing.ts'
import { dayInFull } from '../../../words/dates.ts'
import { bottleName } from '../../../words/names.ts'
import { capital } from '../../../words/numbers.ts'
import { useReading } from '../../useReading.ts'
import { NotHere } from '../NotHere.tsx'
import { useAccounts } from '../useAccounts.ts'
import { ClosingCost } from './ClosingCost.tsx'

export const Closing = ({ id }: { readonly id: BottleId }) => {
  const reading = useReading()
  const { world, now, today, zone } = reading
  const account = useAccounts().get(id)
  if (!account) return <NotHere title="A closing sheet" says="This bottle is not on record." />
  const { dose } = doseToFreeze(world, account.bottle.recorded.food, now)
  const closed = closing(world, account, dose, { now, today })
  const cost = doseCost(world, account, dose, { now, today })
  const { daysFresh, daysFrozen, worstLoss } = closed
  const facts = [
    { term: 'Reached a tank', fact: reachedWords(closed.reached), note: `Of ${exactly(closed.held)} that was in it.` },
    ...(daysFresh === undefined
      ? []
      : [{ term: 'Fresh', fact: daysWords(daysFresh), note: 'To its last dose out of the bottle.' }]),
    ...(daysFrozen === undefined
      ? []
      : [
          {
            term: 'Frozen',
            fact: `up to ${daysWords(daysFrozen)}`,
            note: 'The longest a portion waited before it was given.',
          },
        ]),
    {
      term: 'Worst',
      fact: worstLoss ? lossAmount(worstLoss) : 'nothing was lost',
      note: worstLoss && lossWords(worstLoss, dayInFull(wallDay(worstLoss.at, zone))),
    },
  ]
  return (
    <Page title={closed.closed ? 'Closing sheet' : 'Where it went so far'} answer={closingAnswer(closed)}>
      <p>
        <a className="kind-link" href={`#/food/bottle/${id}`}>
          {capital(bottleName(world, id, now))}
        </a>
      </p>
      <ClosingCost account={account} cost={cost} reading={reading} />
      <Section title="Where it went">
        <table className="sheet">
          <thead>
            <tr>
              <th scope="col">What became of it</th>
              <th scope="col">How much</th>
            </tr>
          </thead>
          <tbody>
            {sheetLines(closed).map(([says, amount]) => (
              <tr key={says}>
                <th scope="row">{says}</th>
                <td>{amount}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">All that was in it</th>
              <td>{exactly(closed.held)}</td>
            </tr>
          </tfoot>
        </table>
      </Section>
      <Section title="Best and worst">
        <Facts facts={facts} />
      </Section>
      <nav className="ways" aria-label="Looking back">
        <a href="#/food/finished">The shelf of finished bottles</a>
        <a href="#/food/year">The year in figures</a>
      </nav>
    </Page>
  )
}
