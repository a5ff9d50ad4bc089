/**
 * What was just done, and one touch that takes it back. It is said as soon as it is written: a form that waited for its draft
 * to be cleared would leave the "Undo" of the act before standing meanwhile.
 */
import { type Entry, type Fact, ok, type StrikeRefusal, strikeOut } from '../../core/index.ts'
import { LinkButton } from '../parts/Actions.tsx'
import { Notice } from '../parts/Notice.tsx'
import { useRequest } from '../state/useRequest.ts'
import type { Reading } from '../words/reading.ts'
import { refusalText } from '../words/refusals.ts'

export type SaidDone = { readonly says: string; readonly written: readonly Entry<Fact>[] }

type SaidAndUndoProps = {
  readonly said: SaidDone | undefined
  readonly reading: Reading
  readonly onUndone: () => void
}

export const SaidAndUndo = ({ said, reading, onUndone }: SaidAndUndoProps) => {
  const { busy, refusal, send } = useRequest<StrikeRefusal>()
  const undo = async (written: readonly Entry<Fact>[]) => {
    const done = await send((world, { now }) => {
      const facts: Fact[] = []
      for (const { id, fact } of written) {
        // The door is there, whatever stands behind it.
        if (fact.kind === 'placeDescribed') continue
        const struck = strikeOut(world, { target: id, why: 'mistake' }, now)
        if (!struck.ok) return struck
        facts.push(...struck.value)
      }
      return ok(facts)
    })
    if (done) onUndone()
  }
  return (
    <>
      <output className="said">{said?.says ?? ''}</output>{' '}
      {said && said.written.length > 0 && !busy && <LinkButton onAct={() => void undo(said.written)}>Undo</LinkButton>}
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
    </>
  )
}
