/** The slider, and what moves under the thumb. */
import './worth.css'
import type { ReactNode } from 'react'
import {
  type Bottle,
  bottleCost,
  bottleLastGood,
  type Cost,
  costTimes,
  type Day,
  doseCost,
  type FoodDescribed,
} from '../../../../core/index.ts'
import { ButtonLink } from '../../../parts/Actions.tsx'
import { type Fact, Facts } from '../../../parts/Facts.tsx'
import { dayInFull, dayWords } from '../../../words/dates.ts'
import { cost } from '../../../words/money.ts'
import { millilitres } from '../../../words/numbers.ts'
import { freshWords, ifNotWords, madeWords, openedOnTheWay, unusedWords, yearWords } from '../../../words/worth.ts'
import { useReading } from '../../useReading.ts'
import { useAccounts } from '../useAccounts.ts'
import { DaySlider } from './DaySlider.tsx'
import { useChosenDay, type Worth } from './useWorth.ts'
import { WorthMore } from './WorthMore.tsx'

type WorthCardProps = { readonly bottle: Bottle; readonly food: FoodDescribed; readonly worth: Worth }

export const WorthCard = ({ bottle, food, worth }: WorthCardProps) => {
  const { today } = useReading()
  const { freezing, days, until } = worth
  const [day, chooseDay] = useChosenDay(bottle.id, until)
  const mayFreeze = food.freezerLife !== undefined
  return (
    <>
      <section className="worth" aria-label="If I freeze it on a day">
        {mayFreeze && days > 0 && (
          <DaySlider label="If I freeze it on" today={today} days={days} day={day} onDay={chooseDay} />
        )}
        <WhatThen bottle={bottle} food={food} worth={worth} day={day} />
        {mayFreeze && <ButtonLink href={`#/food/bottle/${bottle.id}/freeze`}>Freeze now</ButtonLink>}
      </section>
      {mayFreeze && <p>{ifNotWords(freezing.ifNot)}</p>}
      {mayFreeze && freezing.until !== bottleLastGood(bottle, food) && <p>{openedOnTheWay(until, today)}</p>}
      <WorthMore worth={worth} day={day} mayFreeze={mayFreeze} />
    </>
  )
}

/** Drawn for each place of the slider: it asks nothing that is the same on every day. */
const WhatThen = ({ bottle, food, worth, day }: WorthCardProps & { readonly day: Day }) => {
  const { world, now, today } = useReading()
  const { freezing, each, dose, yearly } = worth
  const account = useAccounts().get(bottle.id)
  const frozen = food.freezerLife ? freezing.ifFrozenOn(day) : undefined
  const unused = frozen?.wasted ?? freezing.ifNot.wasted
  const paid = account ? doseCost(world, account, dose, { now, today, unused }) : 'notKnown'
  const facts: readonly Fact[] = [
    ...(frozen
      ? [
          { term: 'Fresh doses before', fact: freshWords(frozen.fresh) },
          { term: 'Portions', fact: madeWords(frozen, each) },
          ...(frozen.portions > 0
            ? [
                { term: 'Good until', fact: frozen.lastGood ? dayInFull(frozen.lastGood) : 'not known' },
                {
                  term: 'Last one given',
                  fact: frozen.lastNight ? dayWords(frozen.lastNight, today) : 'never',
                },
              ]
            : []),
          { term: 'Won’t get used in time', fact: unusedWords(frozen) },
        ]
      : [
          { term: 'Fresh doses', fact: freshWords(freezing.ifNot.fresh) },
          { term: 'Won’t get used in time', fact: unused > 0 ? millilitres(unused) : 'nothing' },
        ]),
    {
      term: `A dose of ${millilitres(dose)} costs`,
      fact: paid === 'notKnown' ? whyNot(bottleCost(world, bottle, now), bottle) : cost(paid),
      note: yearly === undefined ? undefined : yearWords(costTimes(paid, yearly)),
    },
  ]
  return <Facts facts={facts} />
}

/** Not known for want of a price, or because not one dose comes of it. */
const whyNot = (whole: Cost, { id }: Bottle): ReactNode =>
  whole === 'notKnown' ? <a href={`#/food/bottle/${id}`}>price not known</a> : 'not one is used'
