/** How long a food lasts, night by night. */
import './lasts.css'
import { useMemo } from 'react'
import {
  type FoodDescribed,
  type FoodId,
  foodAt,
  foodsAt,
  lastsOf,
  onHand,
  roundsOf,
  stock,
  tanksAt,
  type Walk,
  walk,
} from '../../../../core/index.ts'
import { ButtonLink } from '../../../parts/Actions.tsx'
import { Empty } from '../../../parts/Empty.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { Page } from '../../../parts/Page.tsx'
import { lastsSentence, wastedWords } from '../../../words/food.ts'
import { bareTankWords, nothingLeft, planIs, whichFood } from '../../../words/lasts.ts'
import { type Reading, useReading } from '../../useReading.ts'
import { Months } from './Months.tsx'
import { planPath } from './planPath.ts'
import { UseUp } from './UseUp.tsx'
import { useShown } from './useShown.ts'
import { WhyMoved } from './WhyMoved.tsx'

type HowLongProps = { readonly id: FoodId | undefined; readonly month: string | undefined }

export const HowLong = ({ id, month }: HowLongProps) => {
  const reading = useReading()
  const { world, now } = reading
  const foods = [...world.foods.keys()].flatMap((food) => foodAt(world, food, now) ?? [])
  const food = foods.find((known) => known.food === id) ?? (id === undefined ? firstFed(reading) : undefined)
  if (!food)
    return (
      <Page title="How long it lasts" answer={id ? 'This food is not on record.' : 'No food is on record.'}>
        <Empty says="Put a bottle on record, or the portions you have, and this page says until when there is enough.">
          <ButtonLink href="#/food">Food</ButtonLink>
        </Empty>
      </Page>
    )
  return <OfFood key={food.food} food={food} foods={foods} month={month} reading={reading} />
}

/** One that a plan feeds, rather than one that only stands there. */
const firstFed = ({ world, now }: Reading): FoodDescribed | undefined => {
  const foods = foodsAt(world, now)
  return foods.find(({ food }) => roundsOf(world, food, now).length > 0) ?? foods[0]
}

type OfFoodProps = {
  readonly food: FoodDescribed
  readonly foods: readonly FoodDescribed[]
  readonly month: string | undefined
  readonly reading: Reading
}

const OfFood = ({ food, foods, month, reading }: OfFoodProps) => {
  const { world, now, today } = reading
  const walked = useMemo(() => walk(world, food.food, now), [world, food, now])
  const last = walked && lastsOf(walked)
  const before = useShown(food.food, last?.bareNight, world)
  const there = onHand(stock(world, now, today), food.food, today)
  const wasted = last && wastedWords(last.wasted, world, now, today)
  // Where nothing was left then and nothing is left now, the date goes along with the days: nothing moved it.
  const moved =
    last && before && before.bareNight !== last.bareNight && !(last.doses === 0 && before.bareNight < last.bareNight)
  return (
    <Page title="How long it lasts" when={food.name} answer={lastsSentence(food, there, last, today)}>
      {moved && <WhyMoved food={food.food} before={before} bareNight={last.bareNight} reading={reading} />}
      {foods.length > 1 && (
        <nav className="lasts-foods" aria-label={whichFood}>
          {foods.map((each) => (
            <a
              key={each.food}
              href={`#/food/lasts/${each.food}`}
              aria-current={each.food === food.food ? 'page' : undefined}
            >
              {each.name}
            </a>
          ))}
        </nav>
      )}
      {!walked || !last ? (
        <Empty says={tanksAt(world, now).length > 0 ? planIs : 'A plan needs a tank first.'}>
          <ButtonLink href={planPath(reading, food.food)}>Make a plan</ButtonLink>
        </Empty>
      ) : walked.steps.length === 0 ? (
        <Empty says={nothingLeft}>
          <ButtonLink href="#/food/bottle/new">Log a bottle</ButtonLink>
          <ButtonLink kind="quiet" href="#/food/lot/new">
            I already have frozen portions
          </ButtonLink>
        </Empty>
      ) : (
        <>
          {wasted && <Notice>{wasted}</Notice>}
          <UseUp food={food.food} reading={reading} />
          <EachTank walked={walked} reading={reading} />
          <Months food={food.food} walked={walked} bareNight={last.bareNight} month={month} reading={reading} />
        </>
      )}
    </Page>
  )
}

/** Tanks that do not all run out on one night. */
const EachTank = ({ walked, reading }: { readonly walked: Walk; readonly reading: Reading }) => {
  const { world, now, today } = reading
  if (new Set(walked.bare.map(({ on }) => on)).size < 2) return null
  return (
    <div>
      <p>First night without food:</p>
      <ul className="lasts-tanks">
        {walked.bare.map(({ plan, on }) => (
          <li key={plan.plan}>{bareTankWords(plan, on, world, now, today)}</li>
        ))}
      </ul>
    </div>
  )
}
