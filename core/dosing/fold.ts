/** Makes of dosing facts what dosing/state.ts describes. Facts come in the order they happened. */
import type { Day } from '../basis/days.ts'
import type { FoodId, PlanId, TankId } from '../basis/ids.ts'
import type { FoodRetired } from '../food/facts.ts'
import { gather } from '../ledger/gather.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { TankRetired } from '../tank/facts.ts'
import type { DosingFact, NextNightChosen, PlanEnded, PlanHeld, PlanMade } from './facts.ts'
import type { NightMark, NightRange } from './state.ts'

export const emptyDosing = () => ({
  plans: new Map<PlanId, PlanMade[]>(),
  plansEnded: new Map<PlanId, Pick<PlanEnded, 'at'>[]>(),
  holds: new Map<PlanId, PlanHeld[]>(),
  choices: new Map<PlanId, NextNightChosen[]>(),
  missed: new Map<PlanId, NightRange[]>(),
  nights: new Map<PlanId, Map<Day, NightMark[]>>(),
  lastNight: new Map<PlanId, Day>(),
})
type Folding = ReturnType<typeof emptyDosing>

const mark = ({ nights, lastNight }: Folding, plan: PlanId, night: Day, note: NightMark) => {
  let known = nights.get(plan)
  if (!known) {
    known = new Map()
    nights.set(plan, known)
  }
  gather(known, night, note)
  const last = lastNight.get(plan)
  if (last === undefined || night > last) lastNight.set(plan, night)
}

export const applyDosing = (state: Folding, id: Stamp, fact: DosingFact) => {
  switch (fact.kind) {
    case 'planMade':
      return gather(state.plans, fact.plan, fact)
    case 'planEnded':
      return gather(state.plansEnded, fact.plan, fact)
    case 'planHeld':
      return gather(state.holds, fact.plan, fact)
    case 'nextNightChosen':
      return gather(state.choices, fact.plan, fact)
    case 'doseGiven':
    case 'doseSetAside':
    case 'doseGivenOffPlan':
      for (const { plan, night, amount } of fact.served)
        if (plan !== undefined) mark(state, plan, night, { what: 'given', entry: id, at: fact.at, amount })
      return
    case 'nightSkipped':
      return mark(state, fact.plan, fact.night, { what: 'skipped', entry: id, at: fact.at, amount: 0 })
    case 'nightUnknown':
      return mark(state, fact.plan, fact.night, { what: 'unknown', entry: id, at: fact.at, amount: 0 })
    case 'nightsMissed':
      return gather(state.missed, fact.plan, { from: fact.from, to: fact.to })
    case 'nightsCounted':
      // Something was given, nobody knows when last: less is safe, so the round goes on from the end of the range.
      for (const { plan, from, to } of fact.rounds)
        if (fact.doses > 0) mark(state, plan, to, { what: 'counted', entry: id, at: fact.at, amount: 0 })
        else gather(state.missed, plan, { from, to })
      return
    default:
      fact satisfies never
  }
}

/** What a tank or a food that is no longer there had planned ends with it. */
export const endPlans = (state: Folding, { at, ...gone }: TankRetired | FoodRetired) => {
  const isGone = (plan: { readonly tank: TankId; readonly food: FoodId }): boolean =>
    gone.kind === 'tankRetired' ? plan.tank === gone.tank : plan.food === gone.food
  for (const [plan, made] of state.plans) {
    const latest = made.at(-1)
    if (latest && isGone(latest)) gather(state.plansEnded, plan, { at })
  }
}
