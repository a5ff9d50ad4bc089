/** A freezer that was off or open, or a fridge that was not right: bag by bag, bottle by bottle. */
import {
  type BottleFound,
  type BottleId,
  type Day,
  type FoodDescribed,
  type FoundAs,
  foodAt,
  freezerThawed,
  fridgeTroubled,
  fridgeVerdicts,
  ifThawed,
  ifTroubled,
  type LotId,
  lasts,
  type PlaceDescribed,
  type PlaceId,
  placeAt,
  portionsLeft,
  thawedSpare,
  thawVerdicts,
  type World,
} from '../../../../core/index.ts'
import { Page } from '../../../parts/Page.tsx'
import { Quiet } from '../../../parts/Quiet.tsx'
import { bottleName } from '../../../words/names.ts'
import { capital, portions } from '../../../words/numbers.ts'
import {
  bottleFoundOptions,
  bottleVerdictWords,
  foundOptions,
  hoursHabit,
  keepFreezerShut,
  keepFridgeShut,
  thenLastsWords,
  verdictWords,
} from '../../../words/trouble.ts'
import { hereIn, type Reading, useReading } from '../../useReading.ts'
import { NotHere } from '../NotHere.tsx'
import { placed } from '../useAct.ts'
import { DoorReport } from './DoorReport.tsx'
import { doorPlaces, type Said } from './doorFields.ts'

export const DoorTrouble = ({ id }: { readonly id: PlaceId }) => {
  const { world, now } = useReading()
  const place = placeAt(world, id, now)
  if (!place) return <NotHere title="A door" says="This door is not on record." />
  return place.door === 'freezer' ? <Freezer place={place} /> : <Fridge place={place} />
}

const Nothing = ({ place, says }: { readonly place: PlaceDescribed; readonly says: string }) => (
  <Page title={place.name} answer={says}>
    <Quiet>{hoursHabit}</Quiet>
    <p>By the book nothing stands behind it.</p>
    <p>
      <a href="#/food">All the food there is</a>
    </p>
  </Page>
)

/** Each food behind the door, as long as it would last then. */
const lasting = (foods: readonly FoodDescribed[], then: World, { world, now, today }: Reading): readonly string[] =>
  foods.flatMap((food) => thenLastsWords(food, lasts(world, food.food, now), lasts(then, food.food, now), today) ?? [])

const Freezer = ({ place }: { readonly place: PlaceDescribed }) => {
  const reading = useReading()
  const { world, now } = reading
  const lots = [...world.lots.values()].filter((lot) => lot.place === place.place && lot.left > 0)
  if (lots.length === 0) return <Nothing place={place} says={keepFreezerShut} />
  const asked = (said: readonly Said<FoundAs>[]) => said.map(({ id, found }) => ({ lot: id as LotId, found }))
  const comesTo = (said: readonly Said<FoundAs>[], on: Day) => {
    const report = { on, lots: asked(said) }
    const then = ifThawed(world, report, now)
    const spare = thawedSpare(then, now)
    const foods = [
      ...new Set(lots.filter(({ id }) => said.some((each) => each.id === id)).map(({ made }) => made.food)),
    ]
    return {
      each: new Map(
        thawVerdicts(world, report, now).map((verdict) => [
          verdict.lot.id as string,
          verdictWords(verdict, on, spare.get(verdict.lot.id) ?? 0, reading),
        ]),
      ),
      all: lasting(
        foods.flatMap((food) => foodAt(world, food, now) ?? []),
        then,
        reading,
      ),
    }
  }
  return (
    <DoorReport
      place={place}
      answer={keepFreezerShut}
      cautions={['What has thawed is never frozen again, in this freezer or another.']}
      things={lots.map((lot) => ({ id: lot.id, name: `${lot.made.mark}, ${portions(portionsLeft(lot))}` }))}
      options={foundOptions}
      comesTo={comesTo}
      ask={({ said, on, minutesOff }) =>
        (latest, context) =>
          placed(
            freezerThawed(
              latest,
              {
                place: place.place,
                on,
                lots: asked(said),
                ...(minutesOff === undefined ? {} : { minutesOff }),
              },
              hereIn(latest, context.now),
            ),
            doorPlaces,
          )
        }
    />
  )
}

type HowFound = BottleFound['found']

const Fridge = ({ place }: { readonly place: PlaceDescribed }) => {
  const reading = useReading()
  const { world, now } = reading
  const bottles = [...world.bottles.values()].filter(
    (bottle) => bottle.place === place.place && !bottle.finished && bottle.left > 0,
  )
  if (bottles.length === 0) return <Nothing place={place} says={keepFridgeShut} />
  const asked = (said: readonly Said<HowFound>[]) => said.map(({ id, found }) => ({ bottle: id as BottleId, found }))
  const comesTo = (said: readonly Said<HowFound>[], on: Day) => {
    const report = { on, bottles: asked(said) }
    const foods = new Set(
      bottles.filter(({ id }) => said.some((each) => each.id === id)).map(({ recorded }) => recorded.food),
    )
    return {
      each: new Map(
        fridgeVerdicts(world, report, now).map((verdict) => [
          verdict.bottle.id as string,
          bottleVerdictWords(verdict, reading),
        ]),
      ),
      all: lasting(
        [...foods].flatMap((food) => foodAt(world, food, now) ?? []),
        ifTroubled(world, report, now),
        reading,
      ),
    }
  }
  return (
    <DoorReport
      place={place}
      answer={keepFridgeShut}
      cautions={['Ice splits glass. Hold a frozen bottle in a cloth, and look at it all round.']}
      things={bottles.map(({ id }) => ({ id, name: capital(bottleName(world, id, now)) }))}
      options={bottleFoundOptions}
      comesTo={comesTo}
      ask={({ said, on, minutesOff }) =>
        (latest, context) =>
          placed(
            fridgeTroubled(
              latest,
              {
                place: place.place,
                on,
                bottles: asked(said),
                ...(minutesOff === undefined ? {} : { minutesOff }),
              },
              hereIn(latest, context.now),
            ),
            doorPlaces,
          )
        }
    />
  )
}
