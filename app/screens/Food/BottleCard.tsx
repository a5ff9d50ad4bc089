/** One bottle: whether it is too late to freeze, what is left, and what may be done with it. */
import { useState } from 'react'
import {
  type BottleId,
  bottleLastGood,
  foodAt,
  freezingWindow,
  isClosed,
  keeping,
  keptIn,
  mostPerWell,
  photosOfBottle,
  usableLiquid,
  usualWell,
  wouldMake,
} from '../../../core/index.ts'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { freezingHeadline } from '../../words/food.ts'
import { bottleName, keepingWords } from '../../words/names.ts'
import { capital } from '../../words/numbers.ts'
import { bottleDoubt } from '../../words/trouble.ts'
import { PhotosOf } from '../Photos/PhotosOf.tsx'
import { useReading } from '../useReading.ts'
import { BottleActs } from './BottleActs.tsx'
import { BottleCorrect } from './BottleCorrect.tsx'
import { BottleFacts } from './BottleFacts.tsx'
import { MeasureLiquid } from './LiquidDeeds.tsx'
import { NotHere } from './NotHere.tsx'
import { UnknownBottle } from './UnknownFood.tsx'
import { useAccounts } from './useAccounts.ts'

export const BottleCard = ({ id }: { readonly id: BottleId }) => {
  const reading = useReading()
  const { world, now, today } = reading
  const [said, setSaid] = useState('')
  const [pricing, setPricing] = useState(0)
  const account = useAccounts().get(id)
  const bottle = world.bottles.get(id)
  const food = bottle && foodAt(world, bottle.recorded.food, now)
  if (!bottle) return <NotHere title="A bottle" says="This bottle is not on record." />
  if (!food) return <UnknownBottle bottle={bottle} />
  const usable = usableLiquid(bottle, food)
  const empty = bottle.finished || bottle.left <= 0
  const lastGood = bottleLastGood(bottle, food)
  const makes = wouldMake(world, bottle, mostPerWell(usualWell), now)
  const headline = empty ? undefined : freezingHeadline(freezingWindow(bottle, food, today), usable, makes, today)
  const status = capital(keepingWords(keeping(lastGood, today, keptIn(bottle)), lastGood, reading))
  const doubt = bottleDoubt(bottle, reading)
  return (
    <Page
      title={capital(bottleName(world, id, now))}
      answer={
        empty ? 'This bottle is finished.' : (headline ?? (doubt ? `${capital(doubt)}. ${status}.` : `${status}.`))
      }
    >
      <div>
        <output className="said">{said}</output>
        {empty ? (
          <MeasureLiquid bottle={bottle} onDone={setSaid} />
        ) : (
          <>
            <p className="ways">
              <a href={`#/food/bottle/${id}/worth`}>Am I in time, and is it worth it?</a>
            </p>
            <BottleActs bottle={bottle} food={food} onDone={setSaid} />
          </>
        )}
      </div>
      <Section title="About this bottle">
        <BottleFacts
          bottle={bottle}
          food={food}
          lastGood={lastGood}
          status={status}
          onPrice={() => setPricing(pricing + 1)}
        />
        <p>
          <a className="kind-link" href={`#/food/bottle/${id}/closing`}>
            {account && isClosed(account) ? 'Close the book on it' : 'Where it went so far'}
          </a>
        </p>
        <PhotosOf
          of={{ entry: bottle.entry }}
          photos={photosOfBottle(world, id)}
          about={bottleName(world, id, now)}
          hint="Of its label: what was printed on it is asked again some day."
          reading={reading}
        />
        <BottleCorrect
          key={pricing}
          bottle={id}
          priceFirst={pricing > 0}
          onDone={(says) => {
            setPricing(0)
            setSaid(says)
          }}
        />
      </Section>
    </Page>
  )
}
