/** Which bottle to buy: up to four, compared by what a dose costs that these tanks would really get. */
import { type FoodDescribed, foodsAt, lasts, onHand, stock } from '../../../../core/index.ts'
import { Actions, Button, LinkButton } from '../../../parts/Actions.tsx'
import { Choice } from '../../../parts/Choice.tsx'
import { Page } from '../../../parts/Page.tsx'
import { type UsedDraft, useDraft } from '../../../state/useDraft.ts'
import { onHandWords } from '../../../words/food.ts'
import { millilitres } from '../../../words/numbers.ts'
import { bestWords, homeWords } from '../../../words/worth.ts'
import { Unfinished } from '../../Unfinished.tsx'
import { useReading } from '../../useReading.ts'
import { NotHere } from '../NotHere.tsx'
import { OfferForm } from './OfferForm.tsx'
import { OffersCompared } from './OffersCompared.tsx'
import { OffersHow } from './OffersHow.tsx'
import {
  blankOffer,
  foodOffered,
  mostOffers,
  type OfferFields,
  type OffersFields,
  offersFields,
} from './offerFields.ts'
import { useOffers } from './useOffers.ts'

const title = 'Which bottle to buy'

export const Offers = () => {
  const { world, now, today } = useReading()
  const draft = useDraft<OffersFields>('offers', offersFields(world, today, now))
  const food = foodOffered(world, draft.fields, now)
  if (!food) return <NotHere title={title} says="No food is on record to compare bottles of." />
  return <OffersOf food={food} draft={draft} />
}

type OffersOfProps = { readonly food: FoodDescribed; readonly draft: UsedDraft<OffersFields> }

const OffersOf = ({ food, draft: { fields, change, clear, restoredFrom } }: OffersOfProps) => {
  const reading = useReading()
  const { world, now, today } = reading
  const offers = useOffers(fields, food)
  const { compared, ranked } = offers
  const said = compared.map(({ offer, each, ahead }) => ({ ...offer, each, doses: ahead.doses }))
  const best = compared[ranked.is === 'ranked' ? (ranked.order[0] ?? 0) : 0]
  const home = onHandWords(onHand(stock(world, now, today), food.food, today))
  const foods = foodsAt(world, now)
  const changeOffer = (place: number, changed: Partial<OfferFields>) =>
    change({ offers: fields.offers.map((offer, at) => (at === place ? { ...offer, ...changed } : offer)) })
  return (
    <Page title={title} when={food.name} answer={bestWords(said, ranked)}>
      <Unfinished {...reading} since={restoredFrom} onFresh={clear} />
      {best && <p>{homeWords(home, food.name, best.ahead.begins, today)}</p>}
      {!lasts(world, food.food, now) && (
        <p>
          No plan feeds {food.name} to a tank yet, so all of each bottle counts as used, {millilitres(offers.dose)} a
          dose.
        </p>
      )}
      <OffersCompared offers={offers} mayFreeze={food.freezerLife !== undefined} />
      {foods.length > 1 && (
        <Choice
          label="Which food?"
          options={foods.map(({ food: value, name }): { value: string; label: string } => ({ value, label: name }))}
          value={food.food}
          onChange={(chosen) => change({ food: chosen })}
        />
      )}
      {fields.offers.map((offer, place) => (
        <OfferForm
          // biome-ignore lint/suspicious/noArrayIndexKey: an offer is its place in the list
          key={place}
          place={place}
          fields={offer}
          wrong={offers.wrong[place] ?? {}}
          change={(changed) => changeOffer(place, changed)}
          onRemove={
            fields.offers.length > 1
              ? () => change({ offers: fields.offers.filter((_, at) => at !== place) })
              : undefined
          }
        />
      ))}
      <Actions>
        {fields.offers.length < mostOffers && (
          <Button
            kind="quiet"
            onAct={() => change({ offers: [...fields.offers, blankOffer(fields.offers.at(-1)?.currency ?? 'GBP')] })}
          >
            Another bottle
          </Button>
        )}
        <LinkButton onAct={() => void clear()}>Begin afresh</LinkButton>
      </Actions>
      <OffersHow fields={fields} offers={offers} change={change} mayFreeze={food.freezerLife !== undefined} />
    </Page>
  )
}
