/** Am I in time, and is it worth it? One card about one bottle. */
import {
  type Bottle,
  type BottleId,
  bottleLastGood,
  type FoodDescribed,
  foodAt,
  freezingWindow,
  keeping,
} from '../../../../core/index.ts'
import { Page } from '../../../parts/Page.tsx'
import { freezingHeadline } from '../../../words/food.ts'
import { bottleName, keepingWords } from '../../../words/names.ts'
import { capital } from '../../../words/numbers.ts'
import { useReading } from '../../useReading.ts'
import { NotHere } from '../NotHere.tsx'
import { useWorth } from './useWorth.ts'
import { WorthCard } from './WorthCard.tsx'

const title = 'Am I in time, and is it worth it?'

export const Worth = ({ id }: { readonly id: BottleId }) => {
  const { world, now } = useReading()
  const bottle = world.bottles.get(id)
  const food = bottle && foodAt(world, bottle.recorded.food, now)
  if (!bottle || !food) return <NotHere title={title} says="This bottle is not on record." />
  if (bottle.finished || bottle.left <= 0) return <NotHere title={title} says="This bottle is finished." />
  return <WorthOf bottle={bottle} food={food} />
}

const WorthOf = ({ bottle, food }: { readonly bottle: Bottle; readonly food: FoodDescribed }) => {
  const reading = useReading()
  const { world, now, today } = reading
  const worth = useWorth(bottle, food)
  const { freezing, makes } = worth
  const known = freezingWindow(bottle, food, today)
  const lastGood = bottleLastGood(bottle, food)
  // Sealed, it may have to be opened on the way, and then it keeps less long.
  const window = known.is === 'open' ? { ...known, until: worth.until, days: worth.days } : known
  const status = capital(keepingWords(keeping(lastGood, today, 'fridge'), lastGood, reading))
  return (
    <Page
      title={title}
      when={bottleName(world, bottle.id, now)}
      answer={
        freezingHeadline(window, freezing.usable, makes, today) ??
        `${status}. It is not promised a life in the freezer.`
      }
    >
      <WorthCard bottle={bottle} food={food} worth={worth} />
    </Page>
  )
}
