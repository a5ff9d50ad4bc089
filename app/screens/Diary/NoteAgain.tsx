/** A note put right where it stands: the old words stay, crossed out, and the new ones take their place. */
import { useEffect, useRef } from 'react'
import { type NoteWritten, type RewriteRefusal, rewriteNote, type Stamp } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Form } from '../../parts/Form.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { fromStorage, useRequest } from '../../state/useRequest.ts'
import { refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'
import { NoteForm } from './NoteForm.tsx'
import { asFields, momentAgain, told } from './noteFields.ts'

type NoteAgainProps = {
  readonly entry: Stamp
  readonly note: NoteWritten
  readonly reading: Reading
  readonly onClose: () => void
}

export const NoteAgain = ({ entry, note, reading, onClose }: NoteAgainProps) => {
  const panel = useRef<HTMLDivElement>(null)
  const { fields, change, clear } = useDraft(`note/${entry}`, asFields(note, reading))
  const { busy, refusal, send, reset } = useRequest<RewriteRefusal>()
  // The button that opened this is gone; its focus goes to what is to be changed.
  useEffect(() => panel.current?.querySelector('textarea')?.focus(), [])
  const leave = async () => {
    await clear()
    onClose()
  }
  const putRight = async () => {
    const done = await send((world, { now }) =>
      rewriteNote(world, { entry, ...told(fields, momentAgain(fields, note, reading, now)) }, now),
    )
    if (done) await leave()
  }
  const ofField =
    refusal && !fromStorage(refusal) && refusal.why !== 'noSuchEntry' && refusal.why !== 'alreadyCrossedOut'
      ? refusal
      : undefined
  return (
    <div className="diary-undo" ref={panel}>
      <Form onSend={putRight}>
        <NoteForm
          fields={fields}
          reading={reading}
          refusal={ofField}
          onChange={(typed) => {
            change(typed)
            reset()
          }}
        />
        {refusal && !ofField && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
        <Actions>
          <Button submit waiting={busy}>
            Put it right
          </Button>
          <Button kind="quiet" onAct={() => void leave()}>
            Leave it as it was
          </Button>
        </Actions>
      </Form>
    </div>
  )
}
