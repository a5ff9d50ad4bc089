/** The book of what happened, newest first. Nothing is ever taken out of it. */
import { useMemo, useState } from 'react'
import { addDays, concerning, isDay, momentAt, type World, type Zone } from '../../../core/index.ts'
import { ButtonLink, LinkButton } from '../../parts/Actions.tsx'
import { Empty } from '../../parts/Empty.tsx'
import { Page } from '../../parts/Page.tsx'
import { dayInFull } from '../../words/dates.ts'
import { dayClock } from '../../words/diary.ts'
import { entryText } from '../../words/entries.ts'
import { belongsTo, foundText } from '../../words/lookingUp.ts'
import { tankName } from '../../words/names.ts'
import { inShort } from '../../words/notes.ts'
import { unreadText } from '../../words/phone.ts'
import { PleaseCheck } from '../PleaseCheck.tsx'
import { type Reading, useReading } from '../useReading.ts'
import { Book } from './Book.tsx'
import { everything, isEverything, type Looking, LookUp } from './LookUp.tsx'
import { countLines, type LookedFor, lastHappened } from './pages.ts'

export const Diary = ({ noted }: { readonly noted?: string | undefined }) => {
  const reading = useSameReading()
  const { world, now, zone } = reading
  const [looking, setLooking] = useState(everything)
  const looked = useMemo(() => lookedFor(looking, world, zone), [looking, world, zone])
  const count = useMemo(() => countLines(world.history, looked), [world.history, looked])
  const last = lastHappened(world.history, now)
  const answer = last
    ? `Last, ${dayClock(last.fact.at, reading)}: ${inShort(entryText(last.fact, world, now, reading))}`
    : 'Everything you note will stand here in order, and can be crossed out but never lost.'
  const note = isDay(looking.upTo) ? `#/diary/note/${looking.upTo}` : '#/diary/note'
  const empty = world.history.all.length === 0
  return (
    <Page title="Diary" answer={answer}>
      {noted && <output>{noted}</output>}
      {/* Ahead of the questions: among their answers it would pass for one of them. */}
      {!empty && (
        <div>
          <ButtonLink kind="quiet" href={note}>
            {isDay(looking.upTo) ? `Write a note on ${dayInFull(looking.upTo)}` : 'Write a note'}
          </ButtonLink>
        </div>
      )}
      <PleaseCheck />
      {empty ? (
        <Empty says="Nothing is written here yet. The first bottle, the first portions or the first dose begins the book.">
          <a className="diary-link" href="#/food">
            To the food
          </a>
        </Empty>
      ) : (
        <>
          <LookUp looking={looking} reading={reading} onChange={setLooking} />
          <p className="diary-found">
            <output>{!isEverything(looking) && foundText(inWords(looking, reading), count)}</output>{' '}
            {!isEverything(looking) && <LinkButton onAct={() => setLooking(everything)}>Show everything</LinkButton>}
          </p>
          {/* Anew for each thing looked for: it begins at the newest. */}
          <Book key={JSON.stringify(looking)} looked={looked} count={count} reading={reading} />
        </>
      )}
      {world.unread.length > 0 && <p>{unreadText(world.unread.length)}</p>}
    </Page>
  )
}

/** The same reading while nothing has changed in it: a page of lines is not drawn again for a touch beside it. */
const useSameReading = (): Reading => {
  const { world, now, zone, today } = useReading()
  return useMemo(() => ({ world, now, zone, today }), [world, now, zone, today])
}

const lookedFor = ({ upTo, group, tank }: Looking, world: World, zone: Zone): LookedFor => {
  const before = isDay(upTo) ? momentAt(addDays(upTo, 1), 0, zone) : undefined
  const concerns = tank === null ? undefined : concerning(world, tank)
  if (group === null && !concerns) return { before }
  return {
    before,
    wanted: (fact, struck) =>
      (group === null || belongsTo(group, fact.kind, struck)) && (concerns === undefined || concerns(fact)),
  }
}

const inWords = ({ upTo, group, tank }: Looking, { world, now }: Reading) => ({
  group,
  tank: tank === null ? undefined : tankName(world, tank, now),
  upTo: isDay(upTo) ? dayInFull(upTo) : undefined,
})
