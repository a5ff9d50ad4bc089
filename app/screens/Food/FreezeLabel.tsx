/** The label for what is being frozen, as the form stands. */
import { bottleLastGood, isDay, lastGoodFrozen, readMillilitres } from '../../../core/index.ts'
import { BagLabel } from './BagLabel.tsx'
import type { FreezeFields } from './freezeFields.ts'
import type { FreezeOf, PlanRead } from './readFreezing.ts'
import { eachTyped } from './readMade.ts'

type FreezeLabelProps = {
  readonly of: FreezeOf
  readonly plan: PlanRead | undefined
  readonly fields: FreezeFields
}

export const FreezeLabel = ({ of: { bottle, food }, plan, fields }: FreezeLabelProps) => {
  const { frozenOn, mark } = fields
  const each = readMillilitres(eachTyped(fields, plan))
  if (!isDay(frozenOn) || !each.ok) return null
  const inFridge = bottleLastGood(bottle, food)
  const late = inFridge !== undefined && frozenOn > inFridge
  const lastGood = lastGoodFrozen({ frozenOn, late }, food)
  return <BagLabel label={{ mark, food, each: each.value, frozenOn, about: false, lastGood }} />
}
