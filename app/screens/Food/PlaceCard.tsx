/** One door: what it is called, what stands behind it, and that it is gone when it is. */
import { useLocation } from 'wouter'
import {
  describePlace,
  ok,
  type PlaceDescribed,
  type PlaceId,
  placeAt,
  placesAt,
  retirePlace,
  type Shelf,
  stock,
  thingsBehind,
} from '../../../core/index.ts'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { thingsWords } from '../../words/moving.ts'
import { doors } from '../../words/names.ts'
import { hereIn, useReading } from '../useReading.ts'
import { BringBack } from './BringBack.tsx'
import { Deed } from './Deed.tsx'
import { NotHere } from './NotHere.tsx'
import { PlaceForm } from './PlaceForm.tsx'
import { ThingsBehind } from './ThingsBehind.tsx'
import { placed } from './useAct.ts'

export const PlaceCard = ({ id }: { readonly id: PlaceId | 'new' }) => {
  const { world, now, today } = useReading()
  if (id === 'new')
    return (
      <Page title="Another door" answer="Which fridge or freezer is it?">
        <PlaceForm />
      </Page>
    )
  const place = placeAt(world, id, now)
  if (!place) return <NotHere title="A door" says="This door is not on record." />
  const shelf = stock(world, now, today).find((each) => each.place?.place === id)
  const kept = placesAt(world, now).includes(place)
  return (
    <Page title={place.name} answer={answer(place, shelf, kept)}>
      {kept ? <PlaceForm key={place.at} place={place} /> : <Back place={place} />}
      {kept && (
        <p>
          <a className="kind-link" href={`#/food/place/${id}/thaw`}>
            {place.door === 'freezer' ? 'It was off, open or has thawed' : 'It was too warm, or a bottle froze in it'}
          </a>
        </p>
      )}
      {shelf && thingsBehind(shelf) > 0 && (
        <Section title="What stands behind it">
          <ThingsBehind shelf={shelf} />
        </Section>
      )}
      {kept && <Gone place={place} shelf={shelf} />}
    </Page>
  )
}

const answer = (place: PlaceDescribed, shelf: Shelf | undefined, kept: boolean): string => {
  const things = shelf ? thingsBehind(shelf) : 0
  if (!kept) return `A ${doors[place.door]} that is no longer there.`
  return things === 0 ? `A ${doors[place.door]} with nothing in it.` : `A ${doors[place.door]}. ${thingsWords(things)}.`
}

const Gone = ({ place, shelf }: { readonly place: PlaceDescribed; readonly shelf: Shelf | undefined }) => {
  const [, go] = useLocation()
  if (shelf && thingsBehind(shelf) > 0)
    return (
      <p className="shelf-facts">
        {thingsWords(thingsBehind(shelf))}. Once they are moved or used up, this {doors[place.door]} can be taken off
        the list.
      </p>
    )
  return (
    <Deed
      label="It is no longer there"
      act="Take it off the list"
      says=""
      reasons={['brokenDown', 'sold', 'movedHouse']}
      onDone={() => go('/food')}
      ask={(why) =>
        (world, { now }) =>
          placed(retirePlace(world, { place: place.place, ...why }, hereIn(world, now)), '')
        }
    />
  )
}

const Back = ({ place: { place, name, door } }: { readonly place: PlaceDescribed }) => (
  <BringBack
    says="What was kept in it stays in the diary."
    ask={(_, { now }) => ok(describePlace({ place, name, door }, now))}
  />
)
