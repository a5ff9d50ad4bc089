/** A note on any day, written down with one touch. */
import { useLocation } from 'wouter'
import { isDay, type NoteRefusal, writeNote } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Form } from '../../parts/Form.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { fromStorage, useRequest } from '../../state/useRequest.ts'
import { dayInFull } from '../../words/dates.ts'
import { notedWords } from '../../words/notes.ts'
import { refusalText } from '../../words/refusals.ts'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { NoteForm } from './NoteForm.tsx'
import { momentOf, newNote, told } from './noteFields.ts'

export const NotePage = ({ day, onNoted }: { readonly day?: string; readonly onNoted?: (says: string) => void }) => {
  const reading = useReading()
  const [, navigate] = useLocation()
  const onDay = day !== undefined && isDay(day) ? day : undefined
  const { fields, change, clear, restoredFrom } = useDraft(
    onDay ? `note/${onDay}` : 'note',
    newNote(onDay ?? reading.today),
  )
  const { busy, refusal, send, reset } = useRequest<NoteRefusal>()
  const meant = isDay(fields.day) ? fields.day : reading.today
  const write = async () => {
    const done = await send((_world, { now }) => writeNote(told(fields, momentOf(fields, reading, now)), now))
    if (!done) return
    await clear()
    onNoted?.(notedWords(meant, reading.today))
    navigate('/diary')
  }
  const answer = meant === reading.today ? 'A note about today.' : `A note about ${dayInFull(meant)}.`
  return (
    <Page title="A note" answer={answer}>
      <Form onSend={write}>
        <Unfinished since={restoredFrom} zone={reading.zone} today={reading.today} onFresh={() => void clear()} />
        <NoteForm
          fields={fields}
          reading={reading}
          refusal={refusal && !fromStorage(refusal) ? refusal : undefined}
          onChange={(typed) => {
            change(typed)
            reset()
          }}
        />
        {refusal && fromStorage(refusal) && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
        <Actions>
          <Button submit waiting={busy}>
            Write it down
          </Button>
        </Actions>
      </Form>
    </Page>
  )
}
