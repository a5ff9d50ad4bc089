/** What there is of a food that is not on record: crossed out perhaps, or another phone's. It may be counted, moved and thrown away. */
import { useState } from 'react'
import { type Bottle, type Lot, liquidLeft, portionsLeft } from '../../../core/index.ts'
import { Facts } from '../../parts/Facts.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { frozenWords } from '../../words/food.ts'
import { bottleShort, placeName } from '../../words/names.ts'
import { capital, millilitres, portions } from '../../words/numbers.ts'
import { type Reading, useReading } from '../useReading.ts'
import { BottleActs } from './BottleActs.tsx'
import { BottleCorrect } from './BottleCorrect.tsx'
import { LotActs } from './LotActs.tsx'
import { LotTrays } from './LotTrays.tsx'

const notProposed =
  'Without its food’s figures nobody can say until when it is good, and it is not proposed for a dose.'

export const UnknownLot = ({ lot }: { readonly lot: Lot }) => {
  const { world, now, today } = useReading()
  const [said, setSaid] = useState('')
  return (
    <Page title={lot.made.mark} answer={`${capital(portions(portionsLeft(lot)))} of a food not on record.`}>
      <Notice>{notProposed}</Notice>
      <div>
        <output className="said">{said}</output>
        <LotTrays lot={lot} onDone={setSaid} />
      </div>
      <LotActs lot={lot} onDone={setSaid} />
      <Facts
        facts={[
          { term: 'Where', fact: placeName(world, lot.place, now) },
          { term: 'Made', fact: portions(lot.made.portions), note: `${capital(frozenWords(lot, today))}.` },
        ]}
      />
    </Page>
  )
}

export const UnknownBottle = ({ bottle }: { readonly bottle: Bottle }) => {
  const { world, now } = useReading()
  const [said, setSaid] = useState('')
  return (
    <Page
      title={capital(bottleShort(world, bottle.id))}
      answer={`${millilitres(liquidLeft(bottle))} of a food not on record.`}
    >
      <Notice>{notProposed}</Notice>
      <div>
        <output className="said">{said}</output>
        <BottleActs bottle={bottle} food={undefined} onDone={setSaid} />
      </div>
      <Facts facts={[{ term: 'Where', fact: placeName(world, bottle.place, now) }]} />
      <BottleCorrect bottle={bottle.id} priceFirst={false} onDone={setSaid} />
    </Page>
  )
}

type UnknownLinesProps = {
  readonly lots: readonly Lot[]
  readonly bottles: readonly Bottle[]
  readonly reading: Reading
}

export const UnknownLines = ({ lots, bottles, reading: { world, today } }: UnknownLinesProps) =>
  lots.length + bottles.length > 0 && (
    <>
      <p className="shelf-facts">Of a food not on record:</p>
      <Lines>
        {bottles.map((bottle) => (
          <Line key={bottle.id}>
            <a className="kind-link" href={`#/food/bottle/${bottle.id}`}>
              {capital(bottleShort(world, bottle.id))}
            </a>
            , {millilitres(liquidLeft(bottle))} left
          </Line>
        ))}
        {lots.map((lot) => (
          <Line key={lot.id}>
            <a className="kind-link" href={`#/food/lot/${lot.id}`}>
              {lot.made.mark}
            </a>
            , {portions(portionsLeft(lot))} left, {frozenWords(lot, today)}
          </Line>
        ))}
      </Lines>
    </>
  )
