/** What food there is, behind which door, and how long it lasts. */
import './food.css'
import {
  type FoodDescribed,
  foodAt,
  foodRetired,
  foodsAt,
  lasts,
  type OnHand,
  onHand,
  type Source,
  stock,
} from '../../../core/index.ts'
import { Empty } from '../../parts/Empty.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { lastsSentence, wastedWords } from '../../words/food.ts'
import { type Reading, useReading } from '../useReading.ts'
import { FoodKinds } from './FoodKinds.tsx'
import { ForTheBin } from './ForTheBin.tsx'
import { planPath } from './lasts/planPath.ts'
import { OrderLines } from './order/OrderLines.tsx'
import { SetAside } from './SetAside.tsx'
import { ShelfSection } from './ShelfSection.tsx'
import { type Spare, spareIn } from './spare.ts'
import { UsedUp } from './UsedUp.tsx'

const isSpare = (source: Source, spare: Spare): boolean => source.from === 'portions' && spare.has(source.lot)

const has = ({ portions, liquid }: OnHand): boolean => portions.length > 0 || liquid > 0

/** A food with nothing behind any door and no plan has nothing to say. */
const answers = ({ world, now, today }: Reading, foods: readonly FoodDescribed[], spare: Spare) =>
  foods.flatMap((food) => {
    const there = onHand(stock(world, now, today), food.food, today, spare)
    const last = lasts(world, food.food, now)
    if (!last && !has(there)) return []
    return [
      {
        food,
        last,
        says: lastsSentence(food, there, last, today),
        // What has thawed is told where it is set aside.
        wasted:
          last &&
          wastedWords(
            last.wasted.filter((source) => !isSpare(source, spare)),
            world,
            now,
            today,
          ),
      },
    ]
  })

export const Food = () => {
  const reading = useReading()
  const { world, now, today } = reading
  const foods = foodsAt(world, now)
  // One no longer bought may still be on a shelf.
  const past = [...world.foods.keys()].flatMap((id) =>
    foodRetired(world, id, now) ? (foodAt(world, id, now) ?? []) : [],
  )
  const spare = spareIn(reading)
  const said = answers(reading, [...foods, ...past], spare)
  const shelves = stock(world, now, today)
  const nothing = world.bottles.size === 0 && world.lots.size === 0
  return (
    <Page
      title="Food"
      answer={said.length > 0 ? said.map(({ says }) => says).join(' ') : 'No food is on record.'}
      margin={foods.length + past.length > 0 && <FoodKinds foods={foods} past={past} />}
    >
      {said.length > 0 && (
        <nav className="ways" aria-label="How long it lasts">
          {said.map(({ food, last }) => (
            <a key={food.food} href={last ? `#/food/lasts/${food.food}` : planPath(reading, food.food)}>
              {last ? 'How long it lasts, night by night' : 'Make a plan'}
              {said.length > 1 && `: ${food.name}`}
            </a>
          ))}
        </nav>
      )}
      {said.map(({ food, wasted }) => wasted && <Notice key={food.food}>{wasted}</Notice>)}
      <OrderLines foods={foods} reading={reading} />
      {nothing ? (
        <Empty says="Put a bottle on record, or the portions you have, and this page says until when there is enough.">
          <WaysOn />
        </Empty>
      ) : (
        <>
          {shelves.map((shelf) => (
            <ShelfSection key={shelf.place?.place ?? ''} shelf={shelf} spare={spare} reading={reading} />
          ))}
          <SetAside shelves={shelves} spare={spare} reading={reading} />
          <ForTheBin shelves={shelves} spare={spare} reading={reading} />
          <WaysOn />
          <OnPaper />
          <UsedUp reading={reading} />
          <LookingBack />
        </>
      )}
    </Page>
  )
}

const WaysOn = () => (
  <nav className="ways" aria-label="Put food on record">
    <a href="#/food/bottle/new">Log a bottle</a>
    <a href="#/food/purchase/new">A parcel of several things</a>
    <a href="#/food/lot/new">I already have frozen portions</a>
    <a href="#/food/kind/new">A new food</a>
    <a href="#/food/place/new">Another door</a>
    <a href="#/food/offers">Which bottle to buy</a>
  </nav>
)

const LookingBack = () => (
  <nav className="ways" aria-label="Looking back">
    <a href="#/food/finished">Finished bottles</a>
    <a href="#/food/year">The year in figures</a>
    <a href="#/food/wrong">Something went wrong</a>
  </nav>
)

const OnPaper = () => (
  <nav className="ways" aria-label="On paper">
    <a href="#/food/labels">Labels for the bags</a>
    <a href="#/food/paper">A month on paper</a>
  </nav>
)
