/** Makes of dosing facts what dosing/state.ts describes. Facts come in the order they happened. */
import type { Day } from '../basis/days.ts'
import type { PlanId } from '../basis/ids.ts'
import { gather } from '../ledger/gather.ts'
import type { Stamp } from '../ledger/stamp.ts'
import type { DosingFact, PlanMade } from './facts.ts'
import type { NightMark } from './state.ts'

export const emptyDosing = () => ({
  plans: new Map<PlanId, PlanMade[]>(),
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
    case 'doseGiven':
      for (const { plan, night, amount } of fact.served)
        mark(state, plan, night, { what: 'given', entry: id, at: fact.at, amount })
      return
    case 'nightSkipped':
      return mark(state, fact.plan, fact.night, { what: 'skipped', entry: id, at: fact.at, amount: 0 })
    case 'nightUnknown':
      return mark(state, fact.plan, fact.night, { what: 'unknown', entry: id, at: fact.at, amount: 0 })
    default:
      fact satisfies never
  }
}
