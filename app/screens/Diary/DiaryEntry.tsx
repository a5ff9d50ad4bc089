/** One line of the book, and the way to cross it out. */
import './diary.css'
import { useState } from 'react'
import { LinkButton } from '../../parts/Actions.tsx'
import { Line } from '../../parts/Lines.tsx'
import { Struck } from '../../parts/Struck.tsx'
import { useMatter } from '../../state/device.ts'
import { crossedOut, notedWhen } from '../../words/diary.ts'
import { entryText } from '../../words/entries.ts'
import type { Reading } from '../useReading.ts'
import { CrossOut } from './CrossOut.tsx'
import type { DiaryLine } from './pages.ts'

export const DiaryEntry = ({
  line: { entry, struck },
  reading,
}: {
  readonly line: DiaryLine
  readonly reading: Reading
}) => {
  const thisPhone = useMatter('device')
  const [asked, setAsked] = useState(false)
  const text = entryText(entry.fact, reading.world, reading.now, reading)
  const lead = notedWhen(entry, thisPhone, reading)
  if (struck)
    return (
      <Line lead={lead}>
        <Struck says="Crossed out:">{text}</Struck>
        <p className="diary-note">{crossedOut(struck, thisPhone, reading)}</p>
      </Line>
    )
  const canUndo = entry.fact.kind !== 'entryStruckOut'
  return (
    <Line
      lead={lead}
      end={
        canUndo &&
        !asked && (
          <LinkButton onAct={() => setAsked(true)}>
            Undo<span className="for-ears">: {text}</span>
          </LinkButton>
        )
      }
    >
      <p>{text}</p>
      {asked && <CrossOut entry={entry} reading={reading} onKeep={() => setAsked(false)} />}
    </Line>
  )
}
