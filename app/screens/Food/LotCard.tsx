/** One lot of portions: her own trays, thinning, and what may be done at the freezer. */
import { useState } from 'react'
import {
  couldBeShared,
  coverInTime,
  firstOf,
  foodAt,
  keeping,
  type LotId,
  lotLastGood,
  portionsCover,
  portionsLeft,
} from '../../../core/index.ts'
import { Facts } from '../../parts/Facts.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { dayInFull } from '../../words/dates.ts'
import { coverWords, frozenWords, leftWords } from '../../words/food.ts'
import { list } from '../../words/list.ts'
import { firstWords, turnWords } from '../../words/moving.ts'
import { keepingWords, lotName, placeName } from '../../words/names.ts'
import { capital, millilitres, number, portions } from '../../words/numbers.ts'
import { joinedWords, lotDoubt, sniffWords } from '../../words/trouble.ts'
import { SaidAndUndo, type SaidDone } from '../SaidAndUndo.tsx'
import { useReading } from '../useReading.ts'
import { BagLabel } from './BagLabel.tsx'
import { type Done, LotActs } from './LotActs.tsx'
import { LotTrays } from './LotTrays.tsx'
import { NotHere } from './NotHere.tsx'
import { spareIn } from './spare.ts'
import { UnknownLot } from './UnknownFood.tsx'

export const LotCard = ({ id }: { readonly id: LotId }) => {
  const reading = useReading()
  const { world, now, today } = reading
  const [said, setSaid] = useState<SaidDone & { readonly wasFirst: boolean }>()
  const lot = world.lots.get(id)
  const food = lot && foodAt(world, lot.made.food, now)
  if (!lot) return <NotHere title="Portions" says="These portions are not on record." />
  if (!food) return <UnknownLot lot={lot} />
  const { mark, each, portions: made, frozenOn } = lot.made
  const left = portionsLeft(lot)
  const lastGood = lotLastGood(lot, food)
  const status = capital(keepingWords(keeping(lastGood, today, 'freezer'), lastGood, reading))
  const inTime = coverInTime(portionsCover(world, food.food, { each, count: left }, now), lastGood, today)
  const cover = coverWords(inTime, couldBeShared(world, food.food, each, now))
  const first = firstOf(world, id, now)
  const because = first?.because
  const spare = spareIn(reading).get(id)
  const doubt = lotDoubt(lot, left, spare, lastGood, reading)
  const joined = joinedWords(lot, (other) => lotName(world, other), today)
  const lastSniff = lot.smelled.at(-1)
  const done: Done = (says, written = []) => setSaid({ says, written, wasFirst: first !== undefined })
  const turn = said && said.wasFirst !== (first !== undefined) ? ` ${turnWords(first !== undefined, because)}` : ''
  const facts = [
    { term: 'Food', fact: food.name, note: `${millilitres(each)} in each.` },
    { term: 'Where', fact: placeName(world, lot.place, now) },
    { term: 'Made', fact: portions(made), note: `${capital(frozenWords(lot, today))}.` },
    ...(joined.length > 0 ? [{ term: 'Also in this bag', fact: `${capital(list(joined))}.` }] : []),
    {
      term: lot.meltedOn ? 'Good until' : 'Good frozen until',
      fact: lastGood ? dayInFull(lastGood) : 'no promise',
      note: `${status}.`,
    },
    ...(first
      ? [
          {
            term: 'Their turn',
            fact: 'Take this first',
            ...(because ? { note: `${capital(firstWords[because])}.` } : {}),
          },
        ]
      : []),
    ...(lot.softOn ? [{ term: 'A little softer', fact: `since ${dayInFull(lot.softOn)}` }] : []),
    ...(lastSniff ? [{ term: 'Last smelt at', fact: sniffWords(lastSniff, reading) }] : []),
    { term: 'Fed so far', fact: number(lot.fed) },
    ...(lot.gone > 0 ? [{ term: 'Lost, thrown or given away', fact: number(lot.gone) }] : []),
  ]
  const about = lot.made.kind === 'portionsOnHand' && lot.made.about
  return (
    <Page
      title={mark}
      answer={
        left === 0
          ? lot.joinedInto
            ? `They went into the bag of ${lotName(world, lot.joinedInto)}.`
            : 'No portions left in here.'
          : doubt
            ? `${capital(portions(left))}, ${doubt}.`
            : leftWords(left, cover, lastGood, today)
      }
    >
      <div>
        <LotTrays lot={lot} onDone={done} />
        {/* Beside the deeds, and their turn further down: an answer that grew above the thumb would move the page under it. */}
        <SaidAndUndo
          said={said && { ...said, says: `${said.says}${turn}` }}
          reading={reading}
          onUndone={() => setSaid(undefined)}
        />
      </div>
      <LotActs lot={lot} onDone={done} />
      <Section title="About these portions">
        <Facts facts={facts} />
        <MoreExact label="What to write on the bag">
          <BagLabel label={{ mark, food, each, frozenOn, about, lastGood }} />
          {left > 0 && (
            <a className="kind-link" href={`#/food/labels/${id}`}>
              A label with squares to tick
            </a>
          )}
        </MoreExact>
        <Notice kind="caution">What has thawed is not frozen again. It may go to another tank the same night.</Notice>
      </Section>
    </Page>
  )
}
