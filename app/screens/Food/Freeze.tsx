/** Freezing a bottle: plan it, do it, put it on record; one page that may lie beside the trays. */
import {
  type Bottle,
  type BottleId,
  couldBeShared,
  type FoodDescribed,
  foodAt,
  freezingWindow,
  portionsCover,
  usableLiquid,
} from '../../../core/index.ts'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { freezingHeadline } from '../../words/food.ts'
import { bottleName } from '../../words/names.ts'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { FreezeMade } from './FreezeMade.tsx'
import { FreezePlanned } from './FreezePlanned.tsx'
import { freezeFields } from './freezeFields.ts'
import { NotHere } from './NotHere.tsx'
import { readPlan } from './readFreezing.ts'

export const Freeze = ({ id }: { readonly id: BottleId }) => {
  const { world, now } = useReading()
  const bottle = world.bottles.get(id)
  const food = bottle && foodAt(world, bottle.recorded.food, now)
  if (!bottle || !food) return <NotHere title="Freeze a bottle" says="This bottle is not on record." />
  return <FreezePage bottle={bottle} food={food} />
}

const FreezePage = ({ bottle, food }: { readonly bottle: Bottle; readonly food: FoodDescribed }) => {
  const reading = useReading()
  const { world, now, today } = reading
  const draft = useDraft(`freeze/${bottle.id}`, freezeFields(world, today, now))
  const of = { world, bottle, food, today, now }
  const read = readPlan(draft.fields, of)
  const plan = read.ok ? read.value : undefined
  const makes = plan && {
    portions: plan.plan.portions,
    each: plan.portion,
    nights: portionsCover(world, food.food, { each: plan.portion, count: plan.plan.portions }, now),
    couldBeShared: couldBeShared(world, food.food, plan.portion, now),
  }
  const window = freezingWindow(bottle, food, today)
  return (
    <Page
      title={`Freeze ${bottleName(world, bottle.id, now)}`}
      answer={
        freezingHeadline(window, usableLiquid(bottle, food), makes, today) ??
        `${food.name} is not promised a life in the freezer.`
      }
    >
      <Unfinished {...reading} since={draft.restoredFrom} onFresh={draft.clear} />
      <FreezePlanned of={of} read={read} fields={draft.fields} change={draft.change} />
      <Notice kind="caution">
        Keep it apart from people’s food: its own trays, its own pipette, a label that says so. Squeeze the air out of
        the bag and freeze it flat. What has thawed is not frozen again.
      </Notice>
      <FreezeMade of={of} plan={plan} draft={draft} />
    </Page>
  )
}
