/** One line of the book, and what can be done about it. */
import './diary.css'
import { memo, useRef, useState } from 'react'
import { LinkButton } from '../../parts/Actions.tsx'
import { Line } from '../../parts/Lines.tsx'
import { Struck } from '../../parts/Struck.tsx'
import { crossedOut, notedWhen } from '../../words/diary.ts'
import { entryText } from '../../words/entries.ts'
import { inShort } from '../../words/notes.ts'
import type { Phones } from '../../words/phones.ts'
import { Thumbs } from '../Photos/Thumbs.tsx'
import { TooMuchLink } from '../TooMuchLink.tsx'
import type { Reading } from '../useReading.ts'
import { CrossOut } from './CrossOut.tsx'
import { EntryText } from './EntryText.tsx'
import { NoteAgain } from './NoteAgain.tsx'
import type { DiaryLine } from './pages.ts'

type DiaryEntryProps = { readonly line: DiaryLine; readonly reading: Reading; readonly phones: Phones }

const Entry = ({ line: { entry, struck }, reading, phones }: DiaryEntryProps) => {
  const [asked, setAsked] = useState<'undo' | 'putRight' | null>(null)
  const line = useRef<HTMLDivElement>(null)
  const { fact } = entry
  const text = entryText(fact, reading.world, reading.now, reading)
  const asking = struck ? null : asked
  // The buttons go, whichever is pressed; focus stays on the line they belonged to.
  const close = () => {
    setAsked(null)
    line.current?.focus()
  }
  const spoken = <span className="for-ears">: {inShort(text)}</span>
  return (
    <Line lead={notedWhen(entry, phones, reading)}>
      <div className="diary-line" ref={line} tabIndex={-1}>
        <div className="diary-text">
          {struck ? (
            <Struck says="Crossed out:">
              <EntryText text={text} />
            </Struck>
          ) : (
            <>
              <EntryText text={text} />
              <TooMuchLink fact={fact} world={reading.world} />
              {fact.kind === 'photoKept' && <Thumbs photos={[{ entry: entry.id, fact }]} reading={reading} />}
            </>
          )}
        </div>
        {!struck && !asking && fact.kind !== 'entryStruckOut' && (
          <div className="diary-ways">
            {fact.kind === 'noteWritten' && (
              <LinkButton onAct={() => setAsked('putRight')}>Put it right{spoken}</LinkButton>
            )}
            <LinkButton onAct={() => setAsked('undo')}>Cross out{spoken}</LinkButton>
          </div>
        )}
      </div>
      {struck && <p className="diary-note">{crossedOut(struck, phones, reading)}</p>}
      {asking === 'undo' && <CrossOut entry={entry} reading={reading} onClose={close} />}
      {asking === 'putRight' && fact.kind === 'noteWritten' && (
        <NoteAgain entry={entry.id} note={fact} reading={reading} onClose={close} />
      )}
    </Line>
  )
}

/** Fifty of them and more stand on a page, and all but one stay as they are. */
export const DiaryEntry = memo(Entry)
