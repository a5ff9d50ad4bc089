/** One line of the book, and the way to cross it out. */
import './diary.css'
import { useRef, useState } from 'react'
import { LinkButton } from '../../parts/Actions.tsx'
import { Line } from '../../parts/Lines.tsx'
import { Struck } from '../../parts/Struck.tsx'
import { useMatter } from '../../state/device.ts'
import { crossedOut, notedWhen } from '../../words/diary.ts'
import { entryText } from '../../words/entries.ts'
import type { Reading } from '../useReading.ts'
import { CrossOut } from './CrossOut.tsx'
import type { DiaryLine } from './pages.ts'

type DiaryEntryProps = { readonly line: DiaryLine; readonly reading: Reading }

export const DiaryEntry = ({ line: { entry, struck }, reading }: DiaryEntryProps) => {
  const thisPhone = useMatter('device')
  const [asked, setAsked] = useState(false)
  const line = useRef<HTMLDivElement>(null)
  const text = entryText(entry.fact, reading.world, reading.now, reading)
  const asking = asked && !struck
  // The buttons go, whichever is pressed; focus stays on the line they belonged to.
  const close = () => {
    setAsked(false)
    line.current?.focus()
  }
  return (
    <Line lead={notedWhen(entry, thisPhone, reading)}>
      <div className="diary-line" ref={line} tabIndex={-1}>
        <p className="diary-text">{struck ? <Struck says="Crossed out:">{text}</Struck> : text}</p>
        {!struck && !asking && entry.fact.kind !== 'entryStruckOut' && (
          <LinkButton onAct={() => setAsked(true)}>
            Undo<span className="for-ears">: {text}</span>
          </LinkButton>
        )}
      </div>
      {struck && <p className="diary-note">{crossedOut(struck, thisPhone, reading)}</p>}
      {asking && <CrossOut entry={entry} reading={reading} onClose={close} />}
    </Line>
  )
}
