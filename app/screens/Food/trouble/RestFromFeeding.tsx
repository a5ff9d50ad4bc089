/** Nothing more is fed for a while: every plan of a tank held until a day she chooses, in one append. */
import { useState } from 'react'
import {
  addDays,
  type Day,
  type Fact,
  heldUntil,
  holdPlan,
  isDay,
  nightOf,
  ok,
  type PlanMade,
  plansAt,
  restUntil,
  type TankDescribed,
} from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { DayField } from '../../../parts/DayField.tsx'
import { Form } from '../../../parts/Form.tsx'
import { Section } from '../../../parts/Section.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { dayEcho, dayWords, nightWords } from '../../../words/dates.ts'
import { SaidAndUndo, type SaidDone } from '../../SaidAndUndo.tsx'
import type { Reading } from '../../useReading.ts'
import { Refused } from '../Refused.tsx'
import { placed, trouble, useAct } from '../useAct.ts'

type RestProps = {
  readonly tank: TankDescribed
  readonly plan: PlanMade
  /** The night it happened, if it is noted. */
  readonly noted: Day | undefined
  readonly reading: Reading
}

export const RestFromFeeding = ({ tank, plan, noted, reading }: RestProps) => {
  const { world, now, today } = reading
  const act = useAct()
  const [said, setSaid] = useState<SaidDone>()
  const tonight = nightOf(now, tank)
  const suggested = restUntil(plan, noted ?? tonight)
  const { fields, change: type, clear } = useDraft<{ until: string | null }>(`rest/${tank.tank}`, { until: null })
  const until = fields.until ?? (suggested > tonight ? suggested : addDays(tonight, 1))
  const held = heldUntil(world, plan.plan, now)
  const save = async () => {
    const written = await act.send((latest, at) => {
      if (!isDay(until)) return trouble('until', { why: 'dayMissing' })
      const facts: Fact[] = []
      for (const { plan: id, tank: of } of plansAt(latest, at.now)) {
        if (of !== tank.tank) continue
        const hold = placed(holdPlan(latest, { plan: id, until, why: 'tankRests' }, at.now), 'until')
        if (!hold.ok) return hold
        facts.push(...hold.value)
      }
      return ok(facts)
    })
    if (!written || !isDay(until)) return
    void clear()
    setSaid({
      says: `${tank.name} rests until ${nightWords(until)}, ${dayWords(until, today)}.`,
      written,
    })
  }
  return (
    <Section title="Feed nothing for now">
      <SaidAndUndo said={said} reading={reading} onUndone={() => setSaid(undefined)} />
      {held && held > tonight && !said && (
        <p>
          {tank.name} is on hold until {nightWords(held)}, {dayWords(held, today)}.
        </p>
      )}
      <Form onSend={save}>
        <DayField
          label={`Nothing is due for ${tank.name} before`}
          hint="Two rounds and a week at least. What the water says goes before it."
          value={until}
          earliest={tonight}
          echo={dayEcho(until)}
          error={act.wrong('until')}
          onChange={(typed) => {
            act.reset()
            type({ until: typed })
          }}
        />
        <Refused act={act} />
        <Actions>
          <Button submit kind="quiet" waiting={act.busy}>
            Let it rest until then
          </Button>
        </Actions>
      </Form>
    </Section>
  )
}
