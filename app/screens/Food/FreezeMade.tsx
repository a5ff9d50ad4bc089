/** What was really made, counted when done. */
import { useState } from 'react'
import { useLocation } from 'wouter'
import { Actions, Button } from '../../parts/Actions.tsx'
import { CountField } from '../../parts/CountField.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Section } from '../../parts/Section.tsx'
import type { UsedDraft } from '../../state/useDraft.ts'
import { dayEcho } from '../../words/dates.ts'
import { FreezeLabel } from './FreezeLabel.tsx'
import { FreezeQuestion } from './FreezeQuestion.tsx'
import type { FreezeFields } from './freezeFields.ts'
import { KeptAs } from './KeptAs.tsx'
import { PlaceField } from './PlaceField.tsx'
import type { FreezeOf, PlanRead } from './readFreezing.ts'
import { type Confirmed, eachTyped, madeTyped, recordMade } from './readMade.ts'
import { mostPortions } from './trays.ts'
import { useAct } from './useAct.ts'

type FreezeMadeProps = {
  readonly of: FreezeOf
  readonly plan: PlanRead | undefined
  readonly draft: UsedDraft<FreezeFields>
}

export const FreezeMade = ({ of, plan, draft }: FreezeMadeProps) => {
  const act = useAct()
  const [, go] = useLocation()
  const [sure, setSure] = useState<Confirmed>({})
  const { fields } = draft
  // Other figures are another question: what was confirmed of the old ones is not carried over.
  const change = (changed: Partial<FreezeFields>) => {
    act.reset()
    setSure({})
    draft.change(changed)
  }
  const save = async (changed: Partial<FreezeFields> = {}, more: Confirmed = {}) => {
    const all = { ...sure, ...more }
    draft.change(changed)
    setSure(all)
    if (!(await act.send(recordMade({ ...fields, ...changed }, of.bottle.id, plan, all)))) return
    await draft.clear()
    go(`/food/lot/${fields.lot}`)
  }
  return (
    <Section title="I have made them">
      <Form onSend={() => save()}>
        <CountField
          label="How many portions are there?"
          hint={plan && `Planned: ${plan.plan.portions}. Count what you have.`}
          max={mostPortions}
          value={madeTyped(fields, plan)}
          onChange={(made) => change({ made })}
          error={act.wrong('made')}
        />
        <NumberField
          label="Each holds"
          unit="mL"
          value={eachTyped(fields, plan)}
          onChange={(each) => change({ each })}
          error={act.wrong('each')}
        />
        <DayField
          label="Frozen on"
          latest={of.today}
          value={fields.frozenOn}
          echo={dayEcho(fields.frozenOn)}
          onChange={(frozenOn) => change({ frozenOn })}
          error={act.wrong('frozenOn')}
        />
        <PlaceField door="freezer" fields={fields} onChange={change} act={act} />
        <KeptAs fields={fields} onChange={change} />
        <Field
          label="Its mark, as on the bag"
          value={fields.mark}
          onChange={(mark) => change({ mark })}
          error={act.wrong('mark')}
        />
        <FreezeLabel of={of} plan={plan} fields={fields} />
        <FreezeQuestion act={act} save={save} />
        <Actions>
          <Button submit waiting={act.busy}>
            They are in the freezer
          </Button>
        </Actions>
      </Form>
    </Section>
  )
}
