/** A line under a photo, and the day it was taken: the picture stays as it is. */

import { useState } from 'react'
import type { PhotoNoted } from '../../../core/index.ts'
import { isDay, momentOn, type SayRefusal, sayOfPhoto, wallDay } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { useRequest } from '../../state/useRequest.ts'
import { dayEcho } from '../../words/dates.ts'
import { noDayText, photoRefusal } from '../../words/photos.ts'
import type { Reading } from '../useReading.ts'

type SayOfPhotoProps = { readonly photo: PhotoNoted; readonly reading: Reading; readonly onDone: () => void }

export const SayOfPhoto = ({ photo: { entry, fact }, reading, onDone }: SayOfPhotoProps) => {
  const { zone, today } = reading
  const taken = wallDay(fact.at, zone)
  const { busy, refusal, send, reset } = useRequest<SayRefusal>()
  const {
    fields,
    change: type,
    clear,
  } = useDraft(`photo/${entry}`, {
    words: fact.words ?? '',
    day: taken as string,
  })
  const [noDay, setNoDay] = useState(false)
  const change = (changed: Partial<typeof fields>) => {
    setNoDay(false)
    reset()
    type(changed)
  }
  const save = async () => {
    const { day, words } = fields
    if (!isDay(day)) return setNoDay(true)
    const done = await send((world, { now }) =>
      sayOfPhoto(world, { entry, words, at: day !== taken ? momentOn(day, { now, zone }) : fact.at }, now),
    )
    if (!done) return
    await clear()
    onDone()
  }
  const wrong = refusal && photoRefusal(refusal, reading)
  const at = refusal?.why === 'photoNotYet' ? 'day' : refusal?.why === 'photoWordsTooLong' ? 'words' : 'form'
  return (
    <Form onSend={save}>
      <Field
        label="What does it show?"
        lines={2}
        value={fields.words}
        onChange={(words) => change({ words })}
        error={at === 'words' ? wrong : undefined}
      />
      <DayField
        label="When was it taken?"
        latest={today}
        value={fields.day}
        onChange={(day) => change({ day })}
        echo={dayEcho(fields.day)}
        error={noDay ? noDayText : at === 'day' ? wrong : undefined}
      />
      {at === 'form' && wrong && <Notice kind="refusal">{wrong}</Notice>}
      <Actions>
        <Button submit waiting={busy}>
          Save
        </Button>
      </Actions>
    </Form>
  )
}
