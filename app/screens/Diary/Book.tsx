/** The lines themselves, a page at a time. */
import { useEffect, useMemo, useRef, useState } from 'react'
import { LinkButton } from '../../parts/Actions.tsx'
import { Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { dayHeading } from '../../words/diary.ts'
import { shownText } from '../../words/lookingUp.ts'
import { usePhones } from '../usePhones.ts'
import type { Reading } from '../useReading.ts'
import { DiaryEntry } from './DiaryEntry.tsx'
import { diaryReader, type LookedFor } from './pages.ts'

type BookProps = { readonly looked: LookedFor; readonly count: number; readonly reading: Reading }

const pageful = 50

export const Book = ({ looked, count, reading }: BookProps) => {
  const { world, zone, today } = reading
  const { mine, now } = usePhones(reading)
  // biome-ignore lint/correctness/useExhaustiveDependencies: a list made anew holds the same ids, told apart as text
  const phones = useMemo(() => ({ mine, world, now }), [mine.join(), world, now])
  const [most, setMost] = useState(pageful)
  const read = useMemo(() => diaryReader(world.history, zone, looked), [world.history, zone, looked])
  const { days, shown, older } = useMemo(() => read(most), [read, most])
  const list = useRef<HTMLDivElement>(null)
  const seen = useRef(0)
  // The button has moved down with the page; reading goes on at the first line that is new.
  useEffect(() => {
    if (seen.current > 0) list.current?.querySelectorAll<HTMLElement>('.diary-line')[seen.current]?.focus()
    seen.current = 0
  })
  const showOlder = () => {
    seen.current = shown
    setMost(most + pageful)
  }
  return (
    <>
      <div className="diary-book" ref={list}>
        {days.map(({ day, lines }) => (
          <Section key={day} title={dayHeading(day, today)}>
            <Lines>
              {lines.map((line) => (
                <DiaryEntry key={line.entry.id} line={line} reading={reading} phones={phones} />
              ))}
            </Lines>
          </Section>
        ))}
      </div>
      <p className="diary-found">
        <output>{count > pageful && shownText(shown, count)}</output>{' '}
        {older && <LinkButton onAct={showOlder}>Show older</LinkButton>}
      </p>
    </>
  )
}
