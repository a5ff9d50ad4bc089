/** What is set aside, or has thawed with no dose night left for it: back into use, in the bin, or left as it is. */
import { useState } from 'react'
import {
  type FoodThing,
  liquidGone,
  liquidLeft,
  portionsGone,
  portionsLeft,
  type Shelf,
  takeBack,
} from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { bottleName, keepingWords, lotName, placeName } from '../../words/names.ts'
import { capital, millilitres, portions } from '../../words/numbers.ts'
import { asideWords, thawedWords } from '../../words/trouble.ts'
import { SaidAndUndo, type SaidDone } from '../SaidAndUndo.tsx'
import type { Reading } from '../useReading.ts'
import { Refused } from './Refused.tsx'
import type { Spare } from './spare.ts'
import { type FormAsk, placed, useAct } from './useAct.ts'

type Item = {
  readonly id: string
  readonly name: string
  readonly href: string
  readonly amount: string
  readonly says: readonly string[]
  readonly back: FoodThing | undefined
  readonly bin: FormAsk
}

const itemsOf = (shelves: readonly Shelf[], spare: Spare, reading: Reading): readonly Item[] => {
  const { world, now, today } = reading
  return shelves.flatMap(({ bottles, lots }) => [
    ...bottles.flatMap(({ bottle, left, lastGood, keeping }): Item[] => {
      if (!bottle.aside) return []
      const past = keeping.is === 'past' ? [keepingWords(keeping, lastGood, reading)] : []
      return [
        {
          id: bottle.id,
          name: capital(bottleName(world, bottle.id, now)),
          href: `#/food/bottle/${bottle.id}`,
          amount: millilitres(left),
          says: [asideWords(bottle.aside, reading), ...past, placeName(world, bottle.place, now)],
          back: { bottle: bottle.id },
          bin: (latest, at) => {
            const known = latest.bottles.get(bottle.id)
            const amount = known ? liquidLeft(known) : left
            return placed(
              liquidGone(latest, { bottle: bottle.id, amount, fate: 'discarded', why: 'smelt' }, at.now),
              '',
            )
          },
        },
      ]
    }),
    ...lots.flatMap(({ lot, left, lastGood, keeping }): Item[] => {
      const unused = spare.get(lot.id)
      if (!lot.aside && unused === undefined) return []
      const count = lot.aside ? left : (unused ?? left)
      const past = keeping.is === 'past' ? [keepingWords(keeping, lastGood, reading)] : []
      const why = lot.aside
        ? asideWords(lot.aside, reading)
        : `${lot.meltedOn ? thawedWords(lot.meltedOn, today) : ''}: for the bin or for feeding a culture`
      return [
        {
          id: lot.id,
          name: lotName(world, lot.id),
          href: `#/food/lot/${lot.id}`,
          amount: count < left ? `${portions(count)} of ${left}` : portions(count),
          says: [why, ...past, placeName(world, lot.place, now)],
          back: lot.aside ? { lot: lot.id } : undefined,
          bin: (latest, at) => {
            const known = latest.lots.get(lot.id)
            const there = Math.min(count, known ? portionsLeft(known) : count)
            return placed(
              portionsGone(
                latest,
                { lot: lot.id, count: there, fate: 'discarded', why: lot.aside ? 'smelt' : 'thawed' },
                at.now,
              ),
              '',
            )
          },
        },
      ]
    }),
  ])
}

type SetAsideProps = { readonly shelves: readonly Shelf[]; readonly spare: Spare; readonly reading: Reading }

export const SetAside = ({ shelves, spare, reading }: SetAsideProps) => {
  const act = useAct()
  const [said, setSaid] = useState<SaidDone>()
  const items = itemsOf(shelves, spare, reading)
  if (items.length === 0 && !said) return null
  const send = async (ask: FormAsk, says: string) => {
    const written = await act.send(ask)
    if (written) setSaid({ says, written })
  }
  return (
    <Section title="Set aside or thawed">
      <p className="shelf-facts">Taken for no dose and counted in no figure. Left here, nothing happens to it.</p>
      <SaidAndUndo said={said} reading={reading} onUndone={() => setSaid(undefined)} />
      <Refused act={act} />
      <Lines>
        {items.map(({ id, name, href, amount, says, back, bin }) => (
          <Line
            key={id}
            below={
              <Actions>
                {back && (
                  <Button
                    kind="quiet"
                    waiting={act.busy}
                    onAct={() =>
                      void send(
                        (latest, at) => placed(takeBack(latest, { thing: back }, at.now), ''),
                        `Back in use: ${name}.`,
                      )
                    }
                  >
                    Back into use<span className="for-ears">: {name}</span>
                  </Button>
                )}
                <Button kind="quiet" waiting={act.busy} onAct={() => void send(bin, `In the bin: ${amount}, ${name}.`)}>
                  In the bin<span className="for-ears">: {name}</span>
                </Button>
              </Actions>
            }
          >
            <a className="kind-link" href={href}>
              {name}
            </a>
            <br />
            <span className="shelf-facts">
              {capital(amount)}, {says.join(', ')}.
            </span>
          </Line>
        ))}
      </Lines>
    </Section>
  )
}
