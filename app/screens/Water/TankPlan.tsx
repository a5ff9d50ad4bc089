/** A plan of a tank: what it is, when it is next, and how it is held or stopped. */
import { bandOf, dueOf, endPlan, foodAt, nightOf, type PlanMade, type TankDescribed } from '../../../core/index.ts'
import { Line } from '../../parts/Lines.tsx'
import { foodName } from '../../words/names.ts'
import { aboveWords, bandSource, bandWords, nextWords, planWords } from '../../words/plan.ts'
import { Ending } from '../Ending.tsx'
import type { Reading } from '../useReading.ts'
import { HoldPlan } from './HoldPlan.tsx'

type TankPlanProps = { readonly plan: PlanMade; readonly tank: TankDescribed; readonly reading: Reading }

export const TankPlan = ({ plan, tank, reading }: TankPlanProps) => {
  const { world, now } = reading
  const food = foodAt(world, plan.food, now)
  const due = dueOf(world, plan, now)
  const tonight = nightOf(now, tank)
  const held = due?.heldUntil !== undefined && due.heldUntil > tonight ? due.heldUntil : undefined
  const name = foodName(world, plan.food, now)
  const of = `${tank.name}, ${name}`
  return (
    <Line
      lead="Plan"
      end={
        <a className="link" href={`#/water/plan/${plan.tank}/${plan.food}`}>
          Change
          <span className="for-ears"> the plan: {of}</span>
        </a>
      }
      below={
        <>
          <HoldPlan plan={plan} of={of} held={held} tonight={tonight} />
          <Ending
            label="Stop this plan"
            of={of}
            says={`Nothing more of ${name} is due for ${tank.name}, until a plan is made again. What was given stays in the diary.`}
            act="Stop this plan"
            reasons={['anotherFood', 'hazy', 'tankRests', 'newFish']}
            ask={(why) => (latest, at) => endPlan(latest, { plan: plan.plan, ...why }, at.now)}
            onDone={() => undefined}
          />
        </>
      }
    >
      {food ? (
        <>
          <p>{`${planWords(plan, food)}${aboveWords(plan, bandOf(tank, food))}.`}</p>
          <p>{`${bandWords(bandOf(tank, food))} (${bandSource(food)})`}</p>
        </>
      ) : (
        <p>A plan for a food not on record. Nothing is proposed by it.</p>
      )}
      {due && food && <p>{nextWords(due, tonight)}</p>}
    </Line>
  )
}
