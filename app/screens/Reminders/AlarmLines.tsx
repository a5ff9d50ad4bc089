/** The last fallback: the coming evenings as plain lines, for the phone's own alarm or a note on the fridge. */
import './reminders.css'
import { useState } from 'react'
import { eveningsAhead } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { wishesOf } from '../../reminders/asked.ts'
import { useMatter } from '../../state/device.ts'
import { phoneZone } from '../../state/phoneZone.ts'
import { alarmText, nothingAhead } from '../../words/calendar.ts'
import { copiedWords, notCopiedWords } from '../../words/channels.ts'
import type { Reading } from '../useReading.ts'

export const AlarmLines = ({ reading: { world, now } }: { readonly reading: Reading }) => {
  const wishes = wishesOf(useMatter('wishes'), phoneZone())
  const [said, setSaid] = useState('')
  const text = alarmText(eveningsAhead(world, now, wishes))
  if (text === '') return <p>{nothingAhead}</p>
  return (
    <>
      <p>For the alarm of this phone’s own clock, which rings whatever happens:</p>
      <ul className="alarm-lines">
        {text.split('\n').map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <Actions>
        <Button
          kind="quiet"
          onAct={() =>
            void navigator.clipboard.writeText(text).then(
              () => setSaid(copiedWords),
              () => setSaid(notCopiedWords),
            )
          }
        >
          Copy these lines
        </Button>
        <output>{said}</output>
      </Actions>
    </>
  )
}
