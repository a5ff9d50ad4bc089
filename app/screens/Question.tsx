/** One question, the entries it is about, and the ways to settle it. Settling is an entry too, and can be undone. */
import './question.css'
import { useId } from 'react'
import type { Oddity } from '../../core/index.ts'
import { Actions, Button } from '../parts/Actions.tsx'
import { Line, Lines } from '../parts/Lines.tsx'
import { Notice } from '../parts/Notice.tsx'
import type { Ask } from '../state/store.ts'
import { useRequest } from '../state/useRequest.ts'
import { dayClock } from '../words/diary.ts'
import { entryText } from '../words/entries.ts'
import { inShort } from '../words/notes.ts'
import { number } from '../words/numbers.ts'
import { oddityText, theirsUnreadable } from '../words/oddities.ts'
import { writtenOn } from '../words/phones.ts'
import { refusalText } from '../words/refusals.ts'
import { type SettleRefusal, theirBody, waysOf } from './settling.ts'
import { usePhones } from './usePhones.ts'
import type { Reading } from './useReading.ts'

type QuestionProps = { readonly oddity: Oddity; readonly reading: Reading; readonly onSettled: () => void }

/** A dose plan that is not here may have a year of doses. */
const mostEntries = 3

export const Question = ({ oddity, reading, onSettled }: QuestionProps) => {
  const id = useId()
  const phones = usePhones(reading)
  const { busy, refusal, send } = useRequest<SettleRefusal>()
  const { world, now } = reading
  const about = new Set(oddity.entries)
  const entries = world.history.all.filter(({ id }) => about.has(id))
  const settle = async (ask: Ask<SettleRefusal>) => {
    if (await send(ask)) onSettled()
  }
  const lead = ({ id, fact }: (typeof entries)[number]): string =>
    `${dayClock(fact.at, reading)}, ${oddity.what === 'twoBodies' ? 'as this phone has it' : writtenOn(id, phones)}`
  return (
    // Two questions may have the same answers: for ears each answer belongs to its own.
    <section className="question" aria-labelledby={id}>
      <p id={id}>{oddityText(oddity, world, now)}</p>
      <Lines>
        {entries.slice(0, mostEntries).map((entry) => (
          <Line key={entry.id} lead={lead(entry)}>
            {inShort(entryText(entry.fact, world, now, reading))}
          </Line>
        ))}
        {oddity.what === 'twoBodies' && <Theirs clash={oddity.clash} reading={reading} />}
      </Lines>
      {entries.length > mostEntries && <p>And {number(entries.length - mostEntries)} more like it.</p>}
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
      <Actions>
        {waysOf(oddity, entries, reading).map(({ label, ...way }) =>
          'href' in way ? (
            <a key={label} className="question-link" href={way.href}>
              {label}
            </a>
          ) : (
            <Button key={label} kind="quiet" waiting={busy} onAct={() => void settle(way.ask)}>
              {label}
            </Button>
          ),
        )}
      </Actions>
    </section>
  )
}

type TheirsProps = { readonly clash: Extract<Oddity, { what: 'twoBodies' }>['clash']; readonly reading: Reading }

const Theirs = ({ clash, reading }: TheirsProps) => {
  const fact = theirBody(reading.world, clash)
  return fact ? (
    <Line lead={`${dayClock(fact.at, reading)}, as the other has it`}>
      {inShort(entryText(fact, reading.world, reading.now, reading))}
    </Line>
  ) : (
    <Line lead="As the other has it">{theirsUnreadable}</Line>
  )
}
