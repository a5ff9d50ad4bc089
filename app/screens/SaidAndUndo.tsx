/**
 * What was just done at the freezer, what it changes in the order, and one touch that takes it back. It is said as soon as it
 * is written: a form that waited for its draft to be cleared would leave the "Undo" of the act before standing meanwhile.
 */
import { type Entry, type Fact, type FirstBecause, ok, type StrikeRefusal, strikeOut } from '../../../core/index.ts'
import { LinkButton } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { useRequest } from '../../state/useRequest.ts'
import { turnWords } from '../../words/moving.ts'
import { refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'

export type SaidDone = {
  readonly says: string
  readonly written: readonly Entry<Fact>[]
  /** Whether these came first before it was done. */
  readonly wasFirst: boolean
}

type SaidAndUndoProps = {
  readonly said: SaidDone | undefined
  readonly isFirst: boolean
  readonly because: FirstBecause | undefined
  readonly reading: Reading
  readonly onUndone: () => void
}

export const SaidAndUndo = ({ said, isFirst, because, reading, onUndone }: SaidAndUndoProps) => {
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
  const turn = said && said.wasFirst !== isFirst ? ` ${turnWords(isFirst, because)}` : ''
  return (
    <>
      <output className="said">{said ? `${said.says}${turn}` : ''}</output>{' '}
      {said && said.written.length > 0 && !busy && <LinkButton onAct={() => void undo(said.written)}>Undo</LinkButton>}
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
    </>
  )
}
