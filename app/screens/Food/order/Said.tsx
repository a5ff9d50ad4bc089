/** What was just noted or crossed out, and one touch that takes it back. */
import { type ReactNode, useState } from 'react'
import {
  type AgainRefusal,
  type Entry,
  type Fact,
  ok,
  type StrikeRefusal,
  strikeOut,
  writeAgain,
} from '../../../../core/index.ts'
import { LinkButton } from '../../../parts/Actions.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { useRequest } from '../../../state/useRequest.ts'
import { refusalText } from '../../../words/refusals.ts'
import { useReading } from '../../useReading.ts'

type SaidOf = { readonly says: string; readonly written: readonly Entry<Fact>[] }
export type OrderDone = (says: string, written: SaidOf['written']) => void

/** Above what was done, in its own part of the page: further up it would be out of sight. */
export const WithSaid = ({ children }: { readonly children: (onDone: OrderDone) => ReactNode }) => {
  const [said, setSaid] = useState<SaidOf>()
  return (
    <>
      <Said said={said} onUndone={() => setSaid(undefined)} />
      {children((says, written) => setSaid({ says, written }))}
    </>
  )
}

const Said = ({ said, onUndone }: { readonly said: SaidOf | undefined; readonly onUndone: () => void }) => {
  const reading = useReading()
  const { busy, refusal, send } = useRequest<StrikeRefusal | AgainRefusal>()
  const undo = async (written: readonly Entry<Fact>[]) => {
    const done = await send((world, { now }) => {
      const facts: Fact[] = []
      for (const { id, fact } of written) {
        // A crossing-out cannot be crossed out: what it hid is written once more.
        const undone =
          fact.kind === 'entryStruckOut'
            ? writeAgain(world, fact.target)
            : strikeOut(world, { target: id, why: 'mistake' }, now)
        if (!undone.ok) return undone
        facts.push(...undone.value)
      }
      return ok(facts)
    })
    if (done) onUndone()
  }
  return (
    <div>
      <output className="said">{said?.says ?? ''}</output>
      {said && said.written.length > 0 && !busy && <LinkButton onAct={() => void undo(said.written)}>Undo</LinkButton>}
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
    </div>
  )
}
