/** The plan for one tank and one food: how much, and every how many nights. */
import { useState } from 'react'
import { useLocation, useParams } from 'wouter'
import {
  type Band,
  bandOf,
  type FoodDescribed,
  type FoodId,
  foodAt,
  foodRetired,
  type Moment,
  makePlan,
  nightOf,
  type PlanId,
  type PlanRefusal,
  planFor,
  plansAt,
  portionFit,
  sourcesOf,
  type TankDescribed,
  type TankId,
  tankKept,
  type World,
} from '../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Empty } from '../../parts/Empty.tsx'
import { Form } from '../../parts/Form.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Page } from '../../parts/Page.tsx'
import { newId } from '../../state/ids.ts'
import { useDraft } from '../../state/useDraft.ts'
import { fromStorage, useRequest } from '../../state/useRequest.ts'
import { dayInFull } from '../../words/dates.ts'
import { millilitres, typedMillilitres } from '../../words/numbers.ts'
import { bandWords, fitWords, rhythmWords } from '../../words/plan.ts'
import { refusalText } from '../../words/refusals.ts'
import { Unfinished } from '../Unfinished.tsx'
import { type Reading, useReading } from '../useReading.ts'
import { fieldOf, type PlanFields, type PlanWrong, readPlan } from './planFields.ts'

export const PlanForm = () => {
  const { tank: id, food: given } = useParams<{ tank: TankId; food?: FoodId }>()
  const reading = useReading()
  const { world, now } = reading
  const tank = tankKept(world, id, now)
  // One no longer bought is offered only where its plan goes on all the same: made by another phone, perhaps.
  const foods = [...world.foods.keys()].flatMap((food) =>
    foodRetired(world, food, now) && !planFor(world, id, food, now) ? [] : (foodAt(world, food, now) ?? []),
  )
  const unplanned = foods.find(({ food }) => !planFor(world, id, food, now))
  const [chosen, choose] = useState(given ?? unplanned?.food ?? foods[0]?.food)
  const food = foods.find((known) => known.food === chosen)
  if (!tank || !food)
    return (
      <Page title="Plan" answer={tank ? 'A plan needs a food first.' : 'This tank is not on record.'}>
        <Empty says="A plan is a food, an amount and every how many nights.">
          <ButtonLink href={tank ? '#/food/bottle/new' : '#/water'}>
            {tank ? 'Log a bottle' : 'Back to Water'}
          </ButtonLink>
        </Empty>
      </Page>
    )
  return (
    <Page title={`Plan for ${tank.name}`} answer={bandWords(bandOf(tank, food))}>
      {foods.length > 1 && (
        <Choice
          label="Which food?"
          options={foods.map(({ food: value, name }) => ({ value, label: name }))}
          value={food.food}
          onChange={choose}
        />
      )}
      <Fields key={food.food} tank={tank} food={food} reading={reading} />
    </Page>
  )
}

const rhythms = (['lastDose', 'fixedNights'] as const).map((value) => ({ value, ...rhythmWords[value] }))

/** What the portions she has come to, each size once. */
const fits = (world: World, food: FoodId, band: Band, now: Moment): readonly string[] => {
  const sizes = sourcesOf(world, food, now).flatMap((source) => (source.from === 'portions' ? [source.each] : []))
  return [...new Set(sizes)].map((each) => fitWords(each, portionFit(each, band)))
}

type FieldsProps = { readonly tank: TankDescribed; readonly food: FoodDescribed; readonly reading: Reading }

const Fields = ({ tank, food, reading }: FieldsProps) => {
  const { world, now } = reading
  const known = planFor(world, tank.tank, food.food, now)
  const band = bandOf(tank, food)
  const low = band && band.shown !== 'tooSmall' ? band.shown.low : undefined
  const tonight = nightOf(now, tank)
  const [, go] = useLocation()
  const { fields, change, clear, restoredFrom } = useDraft<PlanFields & { readonly plan: PlanId }>(
    `plan/${tank.tank}/${food.food}`,
    {
      plan: known?.plan ?? newId<PlanId>(),
      amount: known ? typedMillilitres(known.amount) : low ? typedMillilitres(low) : '',
      everyNights: String(known?.everyNights ?? food.everyNights),
      firstNight: known?.firstNight ?? tonight,
      rhythm: known?.rhythm ?? 'lastDose',
    },
  )
  const { busy, refusal, send, reset } = useRequest<PlanRefusal>()
  const [wrong, setWrong] = useState<PlanWrong>()
  const read = readPlan(fields, tonight)

  const save = async (sure: boolean) => {
    setWrong(read.ok ? undefined : read.refusal)
    if (!read.ok) return
    const asked = { plan: fields.plan, tank: tank.tank, food: food.food, ...read.value, sure }
    const written = await send((latest, at) => {
      // A plan that came from another phone since this form was begun is the one that is changed.
      const there = planFor(latest, tank.tank, food.food, at.now)
      return makePlan(latest, { ...asked, plan: there?.plan ?? asked.plan }, at.now)
    })
    if (!written) return
    await clear()
    // A first plan is what tonight was waiting for; a changed one is looked at where it was changed.
    go(plansAt(world, now).length === 0 ? '/' : '/water')
  }
  const typed = (part: Partial<typeof fields>) => {
    change(part)
    setWrong(undefined)
    reset()
  }
  const inField = (field: PlanWrong['field']) => {
    if (wrong?.field === field) return refusalText(wrong.refusal, reading)
    if (!refusal || fromStorage(refusal) || refusal.why === 'aboveRange' || fieldOf(refusal) !== field) return undefined
    return refusalText(refusal, reading)
  }
  return (
    <Form onSend={() => save(false)}>
      <Unfinished since={restoredFrom} zone={reading.zone} today={reading.today} onFresh={() => void clear()} />
      <NumberField
        label="One dose"
        unit="mL"
        hint={low ? `Start low: ${millilitres(low)}.` : undefined}
        value={fields.amount}
        onChange={(amount) => typed({ amount })}
        error={inField('amount')}
      />
      {band && fits(world, food.food, band, now).map((text) => <p key={text}>{text}</p>)}
      <NumberField
        label="Nights from one dose to the next"
        hint="2 is every other night."
        value={fields.everyNights}
        onChange={(everyNights) => typed({ everyNights })}
        error={inField('everyNights')}
      />
      <Choice
        label="Counted from what?"
        options={rhythms}
        value={fields.rhythm}
        onChange={(rhythm) => typed({ rhythm })}
      />
      <DayField
        label={fields.rhythm === 'fixedNights' ? 'One of the nights, from which they are counted' : 'First night'}
        value={fields.firstNight}
        onChange={(firstNight) => typed({ firstNight })}
        echo={read.ok ? dayInFull(read.value.firstNight) : undefined}
      />
      {refusal?.why === 'aboveRange' && (
        <Notice kind="refusal">
          <p>{refusalText(refusal, reading)}</p>
          <Button kind="quiet" onAct={() => void save(true)}>
            Keep it; do not ask again
          </Button>
        </Notice>
      )}
      {refusal && fromStorage(refusal) && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
      <Actions>
        <Button submit waiting={busy}>
          Save the plan
        </Button>
      </Actions>
    </Form>
  )
}
