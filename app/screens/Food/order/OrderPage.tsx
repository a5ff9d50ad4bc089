/** When to order which food, and what goes with it: the days an order takes, and the days nobody is at home. */
import { foodsAt, orderedOf } from '../../../../core/index.ts'
import { Empty } from '../../../parts/Empty.tsx'
import { Page } from '../../../parts/Page.tsx'
import { Section } from '../../../parts/Section.tsx'
import { orderLine } from '../../../words/ordering.ts'
import { useReading } from '../../useReading.ts'
import { AwayDays } from './AwayDays.tsx'
import { OrderFood } from './OrderFood.tsx'
import { OrderTakes } from './OrderTakes.tsx'
import { WithSaid } from './Said.tsx'

export const OrderPage = () => {
  const reading = useReading()
  const { world, now, today } = reading
  const foods = foodsAt(world, now)
  const lines = foods.flatMap(({ food }) => orderLine(world, food, reading)?.says ?? [])
  if (foods.length === 0)
    return (
      <Page title="Ordering" answer="No food is on record, so there is nothing to order.">
        <Empty says="Once a food and a plan for it are on record, this page says by which day to order more.">
          <p>
            <a href="#/food">To the food</a>
          </p>
        </Empty>
      </Page>
    )
  return (
    <Page
      title="Ordering"
      answer={lines.length > 0 ? lines.join(' ') : 'No plan feeds a food to a tank, so there is no day to order by.'}
    >
      {foods.map((food) => (
        <Section key={food.food} title={food.name}>
          <WithSaid>
            {(onDone) => <OrderFood food={food} ordered={orderedOf(world, food.food, today, now)} onDone={onDone} />}
          </WithSaid>
        </Section>
      ))}
      <Section title="How long an order takes">
        <WithSaid>{(onDone) => <OrderTakes onDone={onDone} />}</WithSaid>
      </Section>
      <Section title="Days nobody is at home">
        <WithSaid>{(onDone) => <AwayDays onDone={onDone} />}</WithSaid>
      </Section>
      <p>
        <a className="kind-link" href="#/food">
          All the food there is
        </a>
      </p>
    </Page>
  )
}
