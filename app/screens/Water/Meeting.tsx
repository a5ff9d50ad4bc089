/** Two foods for one tank: the coming nights on which they meet, in words and marks; and how they may take turns. */
import {
  addDays,
  clashNights,
  type Day,
  makePlan,
  mayAlternate,
  nightOf,
  nightsUntil,
  type PlanMade,
  type PlanRefusal,
  type TankDescribed,
} from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { useRequest } from '../../state/useRequest.ts'
import { nightFrom } from '../../words/dates.ts'
import { foodName } from '../../words/names.ts'
import { meetingWords, turnsWords } from '../../words/plan.ts'
import { refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'
import { NightMarks } from './NightMarks.tsx'

/** Nights ahead: four weeks are as far as anyone looks. */
const ahead = 28

type MeetingProps = {
  readonly tank: TankDescribed
  readonly plans: readonly PlanMade[]
  readonly reading: Reading
}

export const Meeting = ({ tank, plans, reading }: MeetingProps) => {
  const { world, now } = reading
  const [first, second] = plans
  if (!first || !second) return null
  const tonight = nightOf(now, tank)
  const until = addDays(tonight, ahead - 1)
  const meet = clashNights(world, plans, until, now)
  const foods = plans.map((plan) => ({
    name: foodName(world, plan.food, now),
    nights: new Set(nightsUntil(world, plan, until, now)),
  }))
  const total = plans.length === 2 ? first.amount + second.amount : undefined
  return (
    <div className="meeting">
      <p>
        {meetingWords(
          foods.map(({ name }) => name),
          meet,
          total,
          tonight,
        )}
      </p>
      <NightMarks tonight={tonight} nights={ahead} foods={foods} />
      {meet.length > 0 && plans.length === 2 && (
        <>
          <p>{turnsWords(mayAlternate(first, second))}</p>
          {mayAlternate(first, second) && <TakeTurns plan={second} meet={meet} tonight={tonight} reading={reading} />}
        </>
      )}
    </div>
  )
}

type TakeTurnsProps = {
  readonly plan: PlanMade
  readonly meet: readonly Day[]
  readonly tonight: Day
  readonly reading: Reading
}

const TakeTurns = ({ plan, meet: [first], tonight, reading }: TakeTurnsProps) => {
  const { busy, refusal, send } = useRequest<PlanRefusal>()
  if (!first) return null
  const to = addDays(first, 1)
  // What was kept once above the range is not asked about again for another night.
  const { kind: _, at: __, ...same } = plan
  const move = () => void send((world, { now }) => makePlan(world, { ...same, firstNight: to, sure: true }, now))
  return (
    <>
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
      <Actions>
        <Button kind="quiet" waiting={busy} onAct={move}>
          Begin {foodName(reading.world, plan.food, reading.now)} {nightFrom(to, tonight)}
        </Button>
      </Actions>
    </>
  )
}
