/** The bottles one under the other, the cheapest dose first. */
import { Line, Lines } from '../../../parts/Lines.tsx'
import { Section } from '../../../parts/Section.tsx'
import { offerCost, offerLines, offerWords, placeWords } from '../../../words/worth.ts'
import { useReading } from '../../useReading.ts'
import type { Offers } from './useOffers.ts'

type OffersComparedProps = { readonly offers: Offers; readonly mayFreeze: boolean }

export const OffersCompared = ({ offers: { compared, ranked, wells }, mayFreeze }: OffersComparedProps) => {
  const { today } = useReading()
  if (compared.length === 0) return null
  const first = ranked.is === 'ranked' ? ranked.order.flatMap((place) => compared[place] ?? []) : []
  const inOrder = [...first, ...compared.filter((one) => !first.includes(one))]
  return (
    <Section title={first.length > 1 ? 'The cheapest dose first' : 'What it comes to'}>
      <Lines>
        {inOrder.map(({ place, offer, ahead, each, year }) => (
          <Line
            key={place}
            lead={placeWords(place)}
            end={<span className="offer-cost">{offerCost(each)}</span>}
            below={
              <ul className="offer-lines">
                {offerLines(ahead, { year, wells, today }).map((says) => (
                  <li key={says}>{says}</li>
                ))}
              </ul>
            }
          >
            {offerWords(offer, offer.posted)}
          </Line>
        ))}
      </Lines>
      <p className="field-hint">
        {mayFreeze
          ? 'Reckoned as if each were frozen the day it came. What passes its last good day before its turn counts for nothing.'
          : 'What passes its last good day before its turn counts for nothing.'}
      </p>
    </Section>
  )
}
