/** Something to do in place with an amount in millilitres. */
import { useState } from 'react'
import { type Microlitres, readMillilitres } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { useDraft } from '../../state/useDraft.ts'
import type { FieldRefusal } from '../../words/foodRefusals.ts'
import { millilitres } from '../../words/numbers.ts'
import type { Reason } from '../../words/reasons.ts'
import { type Because, because, Why } from '../Why.tsx'
import { Refused } from './Refused.tsx'
import { type FormAsk, useAct } from './useAct.ts'

type AmountDeedProps = {
  /** Where what is typed is kept until it is sent. */
  readonly form: string
  readonly label: string
  readonly question: string
  readonly hint?: string
  readonly act: string
  readonly reasons: readonly Reason[]
  readonly says: (amount: Microlitres) => string
  readonly ask: (typed: string, why: Because, sure: boolean) => FormAsk
  /** A refusal that is a question, asked once: it may be so all the same. */
  readonly doubt?: FieldRefusal['why']
  readonly onDone: (says: string) => void
}

export const AmountDeed = ({ form, label, question, hint, reasons, doubt, onDone, ...props }: AmountDeedProps) => {
  const act = useAct()
  const [times, setTimes] = useState(0)
  const { fields, change: type, clear } = useDraft(form, { amount: '', reason: '' })
  const change = (changed: Partial<typeof fields>) => {
    act.reset()
    type(changed)
  }
  const read = readMillilitres(fields.amount)
  const doIt = async (sure = false) => {
    if (!(await act.send(props.ask(fields.amount, because(fields.reason), sure)))) return
    await clear()
    setTimes(times + 1)
    if (read.ok) onDone(props.says(read.value))
  }
  return (
    <MoreExact key={times} label={label}>
      <div className="food-act">
        <NumberField
          label={question}
          hint={hint}
          unit="mL"
          value={fields.amount}
          onChange={(amount) => change({ amount })}
          error={act.wrong('amount')}
        />
        <Why reasons={reasons} value={fields.reason} onChange={(reason) => change({ reason })} />
        <Refused act={act}>
          {doubt !== undefined && act.refusal?.why === doubt && read.ok && (
            <Actions>
              <Button kind="quiet" waiting={act.busy} onAct={() => doIt(true)}>
                It is so: {millilitres(read.value)}
              </Button>
            </Actions>
          )}
        </Refused>
        <Actions>
          <Button onAct={() => doIt()} waiting={act.busy}>
            {props.act}
          </Button>
        </Actions>
      </div>
    </MoreExact>
  )
}
