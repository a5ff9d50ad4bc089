/** The month pages, three at a time, and whose letter is whose. */
import { useState } from 'react'
import { useLocation } from 'wouter'
import { type Day, type FoodId, monthPage, monthsOf, type Walk, type Walked } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { Section } from '../../../parts/Section.tsx'
import { monthWords } from '../../../words/dates.ts'
import {
  firstNightWords,
  goodWords,
  monthLines,
  monthsWords,
  type Named,
  namedIn,
  signsWords,
  takenWords,
  whichLetter,
} from '../../../words/lasts.ts'
import type { Reading } from '../../useReading.ts'
import { Month } from './Month.tsx'

/** As many as fit a desk side by side and a phone without much turning. */
const atOnce = 3
/** More letters than these are folded away. */
const fewLetters = 6

type MonthsProps = {
  readonly food: FoodId
  readonly walked: Walk
  readonly bareNight: Day
  /** "2027-03": in the address, so that it is still there after a reload. */
  readonly month: string | undefined
  readonly reading: Reading
}

export const Months = ({ food, walked, bareNight, month, reading }: MonthsProps) => {
  const { world, today } = reading
  const [, go] = useLocation()
  const [turned, setTurned] = useState(false)
  const months = monthsOf(walked, today)
  const at = months.findIndex((each) => each.startsWith(month ?? today.slice(0, 7)))
  const start = Math.floor(Math.max(0, at) / atOnce) * atOnce
  const shown = months.slice(start, start + atOnce)
  const [first = today] = shown
  const last = shown.at(-1) ?? first
  const pages = shown.map((each) => monthPage(walked, each))
  const names = namedIn(walked.sources, world)
  const here = [...names].filter(([walkedFrom]) =>
    pages.some(({ nights }) =>
      nights.some(
        ({ steps, lastGood }) => lastGood.includes(walkedFrom) || steps.some(({ from }) => from === walkedFrom),
      ),
    ),
  )
  const turn = (to: number) => {
    setTurned(true)
    go(`/food/lasts/${food}/${months[to]?.slice(0, 7)}`, { replace: true })
  }
  const bareAt = Math.floor(months.findIndex((each) => each.slice(0, 7) === bareNight.slice(0, 7)) / atOnce) * atOnce
  return (
    <Section title={monthsWords(first, last)}>
      <p role="status" className="for-ears">
        {turned && monthsWords(first, last)}
      </p>
      <div className="months">
        {pages.map((page) => (
          <Month key={page.month} page={page} names={names} tonight={today} bareNight={bareNight} />
        ))}
      </div>
      {months.length > atOnce && (
        <Actions>
          <Button kind="quiet" waiting={start === 0} onAct={() => turn(start - atOnce)}>
            Earlier
          </Button>
          <Button kind="quiet" waiting={start + atOnce >= months.length} onAct={() => turn(start + atOnce)}>
            Later
          </Button>
          {bareAt !== start && (
            <Button kind="quiet" onAct={() => turn(bareAt)}>
              {firstNightWords(bareNight, today)}
            </Button>
          )}
        </Actions>
      )}
      {here.length > fewLetters ? (
        <MoreExact label={whichLetter} of={monthsWords(first, last)}>
          <Key here={here} today={today} />
        </MoreExact>
      ) : (
        <Key here={here} today={today} />
      )}
      <p className="months-signs">{signsWords(pages)}</p>
      <MoreExact label="The same in words" of={monthsWords(first, last)}>
        {pages.map((page) => (
          <div key={page.month}>
            <p className="lasts-month-name">{monthWords(page.month)}</p>
            <ul className="lasts-lines">
              {monthLines(page, names).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </div>
        ))}
      </MoreExact>
    </Section>
  )
}

const Key = ({ here, today }: { readonly here: readonly (readonly [Walked, Named])[]; readonly today: Day }) =>
  here.length > 0 && (
    <ul className="months-key">
      {here.map(([walked, { letter, name, form }]) => (
        <li key={letter}>
          <span className="month-take" data-form={form}>
            {letter}
          </span>
          <span>
            {name}: {takenWords(walked, today)}. {goodWords(walked, today)}
          </span>
        </li>
      ))}
    </ul>
  )
