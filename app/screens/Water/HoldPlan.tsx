/** On hold until a day, and going on before it. */
import { useState } from 'react'
import { addDays, type Day, type HoldRefusal, holdPlan, isDay, type PlanMade } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { fromStorage, useRequest } from '../../state/useRequest.ts'
import { dayInFull, nightWords } from '../../words/dates.ts'
import type { Reason } from '../../words/reasons.ts'
import { refusalText } from '../../words/refusals.ts'
import { useReading } from '../useReading.ts'
import { because, Why } from '../Why.tsx'

type HoldPlanProps = {
  readonly plan: PlanMade
  /** Its tank and food, for ears. */
  readonly of: string
  /** The night until which it is held now. */
  readonly held: Day | undefined
  readonly tonight: Day
}

export const HoldPlan = ({ plan, of, held, tonight }: HoldPlanProps) => {
  const reading = useReading()
  const { busy, refusal, send } = useRequest<HoldRefusal>()
  const goOn = () => void send((world, { now }) => holdPlan(world, { plan: plan.plan, until: tonight }, now))
  return (
    <>
      {held && (
        <Actions>
          <Button kind="quiet" waiting={busy} onAct={goOn}>
            Go on now<span className="for-ears">: {of}</span>
          </Button>
        </Actions>
      )}
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
      <HoldForm key={held ?? ''} plan={plan} of={of} held={held} tonight={tonight} />
    </>
  )
}

/** A week, until she says otherwise. */
const usual = 7
const reasons: readonly Reason[] = ['away', 'hazy', 'tankRests', 'newFish']

const HoldForm = ({ plan, of, held, tonight }: HoldPlanProps) => {
  const reading = useReading()
  const [times, setTimes] = useState(0)
  const { fields, change, clear } = useDraft<{ until: string; why: string }>(`hold/${plan.plan}`, {
    until: held ?? addDays(tonight, usual),
    why: '',
  })
  const { busy, refusal, send, reset } = useRequest<HoldRefusal>()
  const [missing, setMissing] = useState(false)
  const save = async () => {
    const { until } = fields
    setMissing(!isDay(until))
    if (!isDay(until)) return
    const asked = { plan: plan.plan, until, ...because(fields.why) }
    if (!(await send((world, { now }) => holdPlan(world, asked, now)))) return
    await clear()
    setTimes(times + 1)
  }
  const wrong = missing
    ? 'Until which day?'
    : refusal && !fromStorage(refusal) && refusal.why !== 'noSuchPlan'
      ? refusalText(refusal, reading)
      : undefined
  return (
    <MoreExact key={times} label={held ? 'Hold it for longer, or shorter' : 'Put it on hold'} of={of}>
      <Form onSend={save}>
        <DayField
          label="Nothing is due before"
          hint="Then you are asked whether it goes on."
          value={fields.until}
          earliest={tonight}
          echo={isDay(fields.until) ? `${nightWords(fields.until)}, ${dayInFull(fields.until)}` : undefined}
          error={wrong}
          onChange={(until) => {
            reset()
            setMissing(false)
            change({ until })
          }}
        />
        <Why reasons={reasons} value={fields.why} onChange={(why) => change({ why })} />
        {refusal && !wrong && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
        <Actions>
          <Button submit waiting={busy}>
            Hold it until then
          </Button>
        </Actions>
      </Form>
    </MoreExact>
  )
}
