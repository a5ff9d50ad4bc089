/** A plan's form, and what the core makes of it. */
import {
  type AmountRefusal,
  type Day,
  isDay,
  type NumberRefusal,
  ok,
  type PlanAsked,
  type PlanRefusal,
  type Result,
  readMillilitres,
  readNumber,
  refuse,
} from '../../../core/index.ts'

export type PlanFields = {
  readonly amount: string
  readonly everyNights: string
  readonly firstNight: string
  readonly rhythm: 'lastDose' | 'fixedNights'
}
export type PlanField = keyof PlanFields
export type PlanWrong = { readonly field: PlanField; readonly refusal: AmountRefusal | NumberRefusal | PlanRefusal }

export const readPlan = (
  fields: PlanFields,
  tonight: Day,
): Result<Pick<PlanAsked, 'amount' | 'everyNights' | 'firstNight' | 'rhythm'>, PlanWrong> => {
  const amount = readMillilitres(fields.amount)
  if (!amount.ok) return refuse({ field: 'amount', refusal: amount.refusal })
  const nights = readNumber(fields.everyNights)
  if (!nights.ok) return refuse({ field: 'everyNights', refusal: nights.refusal })
  return ok({
    amount: amount.value,
    everyNights: nights.value,
    firstNight: isDay(fields.firstNight) ? fields.firstNight : tonight,
    ...(fields.rhythm === 'fixedNights' ? { rhythm: 'fixedNights' } : {}),
  })
}

/** Which field a refused plan is about. */
export const fieldOf = ({ why }: PlanRefusal): PlanField => (why === 'nightsOutOfRange' ? 'everyNights' : 'amount')
