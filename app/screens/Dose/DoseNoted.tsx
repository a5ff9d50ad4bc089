/** What the exact form has written, in the diary's words, and the way to take it back. */
import { type Entry, type Fact, ok, type StrikeRefusal, strikeOut } from '../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { useRequest } from '../../state/useRequest.ts'
import { entryText } from '../../words/entries.ts'
import { refusalText } from '../../words/refusals.ts'
import { TooMuchLink } from '../TooMuchLink.tsx'
import type { Reading } from '../useReading.ts'

type DoseNotedProps = {
  readonly written: readonly Entry<Fact>[]
  readonly reading: Reading
  readonly onMore: () => void
}

export const DoseNoted = ({ written, reading, onMore }: DoseNotedProps) => {
  const { world, now } = reading
  const { busy, refusal, send } = useRequest<StrikeRefusal>()
  // The dose is the last of them: before it only a bottle was opened for it.
  const last = written.at(-1)
  if (!last) return null
  const undone = world.history.struck.has(last.id)
  const undo = () =>
    send((latest, at) => {
      const facts: Fact[] = []
      for (const { id } of written) {
        const struck = strikeOut(latest, { target: id, why: 'mistake' }, at.now)
        if (!struck.ok) return struck
        facts.push(...struck.value)
      }
      return ok(facts)
    })
  return (
    <>
      <Notice>
        <p>
          <output>
            {undone ? 'Undone: ' : 'Noted. '}
            {entryText(last.fact, world, now, reading)}
          </output>
        </p>
      </Notice>
      {!undone && <TooMuchLink fact={last.fact} world={world} />}
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
      <Actions>
        {!undone && (
          <Button kind="quiet" waiting={busy} onAct={() => void undo()}>
            Undo
          </Button>
        )}
        <ButtonLink kind="quiet" href="#/">
          Back to Tonight
        </ButtonLink>
        <Button kind="quiet" onAct={onMore}>
          {undone ? 'Write it again' : 'Write down another'}
        </Button>
      </Actions>
    </>
  )
}
