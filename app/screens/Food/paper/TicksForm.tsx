/** "14 ticked": what was ticked on a bag while no phone was at hand, put into the book. Every word of it before it is saved. */
import {
  countPortions,
  countTicks,
  type Lot,
  readTicks,
  refuse,
  squaresOf,
  type TicksAsked,
  type TicksRefusal,
} from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { Choice } from '../../../parts/Choice.tsx'
import { CountField } from '../../../parts/CountField.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { useRequest } from '../../../state/useRequest.ts'
import { inWords } from '../../../words/numbers.ts'
import {
  bookRightWords,
  countSetWords,
  onlySoManyWords,
  squaresRightWords,
  ticksEnteredWords,
  ticksText,
  ticksWords,
} from '../../../words/paper.ts'
import { useReading } from '../../useReading.ts'
import type { Done } from '../LotActs.tsx'

type Fields = {
  /** Undefined: untouched, so it goes along with the book. Null: no number stands there. */
  readonly ticked: number | null | undefined
  readonly others: 'ticked' | 'not'
}

export const TicksForm = ({ lot, onDone }: { readonly lot: Lot; readonly onDone: Done }) => {
  const reading = useReading()
  const { world, now } = reading
  const { busy, refusal, send, reset } = useRequest<TicksRefusal | { why: 'howMany' }>()
  const first: Fields = { ticked: undefined, others: 'ticked' }
  const { fields, change: type, clear } = useDraft(`ticks/${lot.id}`, first)
  const change = (changed: Partial<Fields>) => {
    reset()
    type(changed)
  }
  const { all, given, other } = squaresOf(world, lot)
  const othersTicked = other === 0 || fields.others === 'ticked'
  const ticked = fields.ticked === undefined ? given + (othersTicked ? other : 0) : fields.ticked
  const asked: TicksAsked | undefined = ticked === null ? undefined : { lot: lot.id, ticked, othersTicked }
  const read = asked && readTicks(world, asked, now)
  const fewer = read && !read.ok && read.refusal.why === 'fewerThanBook' ? read.refusal : undefined
  // Nothing was said yet: then it agrees with the book, and that is no answer to anything.
  const says =
    asked && read && !fewer && fields.ticked !== undefined
      ? read.ok
        ? ticksWords(asked, read.value, other, reading)
        : ticksText(read.refusal, reading)
      : ''
  const enter = async () => {
    const written = await send((latest, { now: at }) =>
      asked ? countTicks(latest, asked, at) : refuse({ why: 'howMany' as const }),
    )
    if (!written || !read?.ok) return
    void clear()
    onDone(ticksEnteredWords(read.value), written)
  }
  const setCount = async () => {
    const written = await send((latest, { now: at }) => {
      const again = asked && readTicks(latest, asked, at)
      if (!asked || !again) return refuse({ why: 'howMany' as const })
      if (again.ok) return countTicks(latest, asked, at)
      if (again.refusal.why !== 'fewerThanBook') return again
      const counted = countPortions(latest, { lot: lot.id, counted: again.refusal.wouldBeLeft }, at)
      return counted.ok ? counted : refuse({ why: 'noSuchLot' as const })
    })
    if (!written || !fewer) return
    void clear()
    onDone(countSetWords(fewer.wouldBeLeft), written)
  }
  const bookIsRight = () => {
    void clear()
    if (fewer) onDone(bookRightWords(fewer.given + fewer.other - fewer.ticked))
  }
  return (
    <div className="food-act">
      {other > 0 && (
        <Choice
          label={`The book has ${inWords(other)} lost or gone in another way. Ticked too?`}
          options={[
            { value: 'ticked', label: other === 1 ? 'Yes, that one has a tick' : 'Yes, they have ticks' },
            { value: 'not', label: 'No, only doses are ticked' },
          ]}
          value={fields.others}
          onChange={(others) => change({ others })}
        />
      )}
      <CountField
        label="How many squares are ticked?"
        hint="All of them, from the first."
        fewer="One tick fewer"
        more="One tick more"
        max={othersTicked ? all : all - other}
        tooMany={onlySoManyWords}
        value={ticked}
        onChange={(count) => change({ ticked: count })}
        error={refusal && !fewer ? ticksText(refusal, reading) : undefined}
      />
      <output className="ticks-says">{says}</output>
      {fewer ? (
        <Notice title={ticksText(fewer, reading)}>
          <Actions>
            <Button kind="quiet" waiting={busy} onAct={bookIsRight}>
              The book is right
            </Button>
            <Button kind="quiet" waiting={busy} onAct={() => void setCount()}>
              {squaresRightWords(fewer.wouldBeLeft)}
            </Button>
          </Actions>
        </Notice>
      ) : (
        <Actions>
          <Button waiting={busy} onAct={() => void enter()}>
            Enter the ticks
          </Button>
        </Actions>
      )}
    </div>
  )
}
