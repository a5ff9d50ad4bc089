/** One question, the entries it is about, and the ways to settle it. Settling is an entry too, and can be undone. */
import './question.css'
import type { Oddity } from '../../core/index.ts'
import { Actions, Button } from '../parts/Actions.tsx'
import { Line, Lines } from '../parts/Lines.tsx'
import { Notice } from '../parts/Notice.tsx'
import { useMatter } from '../state/device.ts'
import type { Ask } from '../state/store.ts'
import { useRequest } from '../state/useRequest.ts'
import { dayClock, notedBy } from '../words/diary.ts'
import { entryText } from '../words/entries.ts'
import { number } from '../words/numbers.ts'
import { oddityText } from '../words/oddities.ts'
import { refusalText } from '../words/refusals.ts'
import { type SettleRefusal, waysOf } from './settling.ts'
import type { Reading } from './useReading.ts'

type QuestionProps = { readonly oddity: Oddity; readonly reading: Reading; readonly onSettled: () => void }

/** A dose plan that is not here may have a year of doses. */
const mostEntries = 3

export const Question = ({ oddity, reading, onSettled }: QuestionProps) => {
  const thisPhone = useMatter('device')
  const { busy, refusal, send } = useRequest<SettleRefusal>()
  const { world, now } = reading
  const about = new Set(oddity.entries)
  const entries = world.history.all.filter(({ id }) => about.has(id))
  const settle = async (ask: Ask<SettleRefusal>) => {
    if (await send(ask)) onSettled()
  }
  return (
    <div className="question">
      <p>{oddityText(oddity, world, now)}</p>
      <Lines>
        {entries.slice(0, mostEntries).map((entry) => (
          <Line key={entry.id} lead={`${dayClock(entry.fact.at, reading)}, ${notedBy(entry.id, thisPhone)}`}>
            {entryText(entry.fact, world, now, reading)}
          </Line>
        ))}
      </Lines>
      {entries.length > mostEntries && <p>And {number(entries.length - mostEntries)} more like it.</p>}
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
      <Actions>
        {waysOf(oddity, entries).map(({ label, ...way }) =>
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
    </div>
  )
}
