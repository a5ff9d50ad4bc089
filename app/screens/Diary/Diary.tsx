/** The book of what happened, newest first. Nothing is ever taken out of it. */
import { useMemo, useState } from 'react'
import { addDays, isDay, momentAt } from '../../../core/index.ts'
import { LinkButton } from '../../parts/Actions.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Empty } from '../../parts/Empty.tsx'
import { Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { dayInFull } from '../../words/dates.ts'
import { dayClock, dayHeading } from '../../words/diary.ts'
import { entryText } from '../../words/entries.ts'
import { unreadText } from '../../words/phone.ts'
import { PleaseCheck } from '../PleaseCheck.tsx'
import { useReading } from '../useReading.ts'
import { DiaryEntry } from './DiaryEntry.tsx'
import { diaryPages, lastHappened } from './pages.ts'

const pageful = 50

export const Diary = () => {
  const reading = useReading()
  const { world, now, zone, today } = reading
  const [most, setMost] = useState(pageful)
  const [upTo, setUpTo] = useState('')
  const { days, older } = useMemo(
    () => diaryPages(world.history, zone, most, isDay(upTo) ? momentAt(addDays(upTo, 1), 0, zone) : undefined),
    [world.history, zone, most, upTo],
  )
  const last = lastHappened(world.history, now)
  const answer = last
    ? `Last, ${dayClock(last.fact.at, reading)}: ${entryText(last.fact, world, now, reading)}`
    : 'Everything you note will stand here in order, and can be crossed out but never lost.'
  return (
    <Page title="Diary" answer={answer}>
      <PleaseCheck />
      {world.history.all.length === 0 ? (
        <Empty says="Nothing is written here yet. The first bottle, the first portions or the first dose begins the book.">
          <a className="diary-link" href="#/food">
            To the food
          </a>
        </Empty>
      ) : (
        <MoreExact label="Look up a day" open={upTo !== ''}>
          <DayField
            label="From this day back"
            value={upTo}
            onChange={(typed) => {
              setUpTo(typed)
              setMost(pageful)
            }}
            echo={isDay(upTo) ? dayInFull(upTo) : undefined}
          />
          {upTo !== '' && <LinkButton onAct={() => setUpTo('')}>Back to the newest</LinkButton>}
        </MoreExact>
      )}
      {isDay(upTo) && days.length === 0 && <p>Nothing is noted up to {dayInFull(upTo)}.</p>}
      {days.map(({ day, lines }) => (
        <Section key={day} title={dayHeading(day, today)}>
          <Lines>
            {lines.map((line) => (
              <DiaryEntry key={line.entry.id} line={line} reading={reading} />
            ))}
          </Lines>
        </Section>
      ))}
      {older && <LinkButton onAct={() => setMost(most + pageful)}>Show older</LinkButton>}
      {world.unread.length > 0 && <p>{unreadText(world.unread.length)}</p>}
    </Page>
  )
}
