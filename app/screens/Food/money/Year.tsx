/** A year in figures: doses, nights without, what went to waste, and what it cost. */
import { yearSums, yearsTold } from '../../../../core/index.ts'
import { Choice } from '../../../parts/Choice.tsx'
import { type Fact, Facts } from '../../../parts/Facts.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { Page } from '../../../parts/Page.tsx'
import { Section } from '../../../parts/Section.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { dosesWords } from '../../../words/entries.ts'
import { foodName, tankName } from '../../../words/names.ts'
import { inWords, millilitres, nights } from '../../../words/numbers.ts'
import {
  bottlesWords,
  purseWords,
  unknownPrices,
  unpricedDoses,
  wasteTerm,
  wasteWords,
  yearAnswer,
} from '../../../words/year.ts'
import { useReading } from '../../useReading.ts'
import { useAccounts } from '../useAccounts.ts'

export const Year = () => {
  const { world, now, zone, today } = useReading()
  const accounts = useAccounts()
  const here = { now, zone }
  const years = yearsTold(world, here)
  const thisYear = Number(today.slice(0, 4))
  const { fields, change } = useDraft('year', { year: String(thisYear) })
  const chosen = years.find((year) => String(year) === fields.year) ?? thisYear
  const told = yearSums(world, accounts.values(), chosen, here)
  const without: readonly Fact[] = [
    { term: 'Skipped on purpose', nights: told.skipped },
    { term: 'Nothing given', nights: told.missed },
    { term: 'Nobody remembers', nights: told.unknown },
    { term: 'Not written down', nights: told.open },
  ].flatMap(({ term, nights: count }) => (count > 0 ? [{ term, fact: nights(count) }] : []))
  const unknown = unknownPrices(told)
  return (
    <Page title="The year in figures" answer={yearAnswer(chosen, told, chosen === thisYear)}>
      {years.length > 1 && (
        <Choice
          label="Which year?"
          options={years.map((year): { value: string; label: string } => ({
            value: String(year),
            label: String(year),
          }))}
          value={String(chosen)}
          onChange={(year) => change({ year })}
        />
      )}
      {unknown && <Notice>{unknown}</Notice>}
      <Section title="Money">
        <Facts
          facts={[
            { term: 'Spent in all', fact: purseWords(told.spent) ?? 'nothing known' },
            ...told.foods.map((food) => ({
              term: `On ${foodName(world, food.food, now)}`,
              fact:
                purseWords(food.spent) ??
                (food.bottles === 0 ? 'no bottle came' : food.unpriced > 0 ? 'not known' : 'free'),
              note:
                food.bottles === 0
                  ? undefined
                  : `${bottlesWords(food.bottles)}${food.unpriced > 0 ? `, ${inWords(food.unpriced)} of them without a price` : ''}.`,
            })),
            ...(told.onOther.size > 0
              ? [{ term: 'On other things in the parcels', fact: purseWords(told.onOther) }]
              : []),
          ]}
        />
      </Section>
      {told.tanks.length > 0 && (
        <Section title="Each tank">
          <Facts
            facts={told.tanks.map(({ tank, doses, amount, nights: on, cost, unpriced }) => ({
              term: tank ? tankName(world, tank, now) : 'A tank not known',
              fact: `${dosesWords(doses)}, ${millilitres(amount)}`,
              note: [
                on > 0 ? `On ${nights(on)}.` : '',
                purseWords(cost) ? `Its food cost ${purseWords(cost)}.` : '',
                unpricedDoses(unpriced) ?? '',
              ]
                .filter(Boolean)
                .join(' '),
            }))}
          />
        </Section>
      )}
      {told.foods.some(({ doses }) => doses > 0) && (
        <Section title="Each food">
          <Facts
            facts={told.foods
              .filter(({ doses }) => doses > 0)
              .map(({ food, doses, amount }) => ({
                term: foodName(world, food, now),
                fact: `${dosesWords(doses)}, ${millilitres(amount)}`,
              }))}
          />
        </Section>
      )}
      <Section title="Nights without">
        {without.length > 0 ? (
          <Facts facts={without} />
        ) : (
          <p>No dose night without a dose, as far as is written down.</p>
        )}
      </Section>
      <Section title="What went elsewhere">
        {told.waste.length > 0 ? (
          <Facts facts={told.waste.map((waste) => ({ term: wasteTerm(waste), fact: wasteWords(waste) }))} />
        ) : (
          <p>Nothing was lost, thrown away or given away.</p>
        )}
      </Section>
    </Page>
  )
}
