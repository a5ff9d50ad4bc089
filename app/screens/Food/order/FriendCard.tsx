/** A small card for the friend: her own portions, worked out for their tank. */
import './friendCard.css'
import { useRef, useState } from 'react'
import {
  foodAt,
  friendDose,
  keeping,
  type Lot,
  type LotId,
  lotLastGood,
  readWater,
  type WaterUnit,
} from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { Page } from '../../../parts/Page.tsx'
import { UnitNumberField } from '../../../parts/UnitNumberField.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { cardAnswer, cardLines, cardSaid } from '../../../words/friendCard.ts'
import { keepingWords } from '../../../words/names.ts'
import { capital, waterUnitOptions } from '../../../words/numbers.ts'
import { refusalText } from '../../../words/refusals.ts'
import { useReading } from '../../useReading.ts'
import { NotHere } from '../NotHere.tsx'
import { handOn } from './handOn.ts'

type Fields = { readonly volume: string; readonly unit: WaterUnit | undefined; readonly sure: boolean }

export const FriendCard = ({ id }: { readonly id: LotId }) => {
  const reading = useReading()
  const { world, now, today } = reading
  const { fields, change } = useDraft<Fields>(`card/${id}`, { volume: '', unit: undefined, sure: false })
  const lot = world.lots.get(id)
  const food = lot && foodAt(world, lot.made.food, now)
  if (!lot || !food) return <NotHere title="A card" says="These portions are not on record." />
  const { each } = lot.made
  const lastGood = lotLastGood(lot, food)
  const read = readWater(fields.volume, fields.unit, fields.sure)
  const water = read.ok ? read.value : undefined
  const dose = water && friendDose(each, food.band, water)
  const about = lot.made.kind === 'portionsOnHand' && lot.made.about
  const lines = cardLines({ food, each, lastGood, about, water, dose })
  const doubt = doubtOf(lot, lastGood !== undefined && lastGood < today)
  const wrong = read.ok || read.refusal.why === 'empty' ? undefined : read.refusal
  const said = wrong && refusalText(wrong, reading)
  return (
    <Page title="A card for a friend" answer={cardAnswer(dose, water)}>
      {doubt && (
        <Notice kind="caution">
          {doubt === 'past'
            ? `${capital(keepingWords(keeping(lastGood, today, 'freezer'), lastGood, reading))}: not to be given away.`
            : 'These are set aside or have thawed: not to be given away.'}
        </Notice>
      )}
      <UnitNumberField
        label="How much water is in their tank?"
        hint="Tank and sump together. A round number will do."
        value={fields.volume}
        onChange={(volume) => change({ volume, sure: false })}
        unitLabel="Unit"
        units={waterUnitOptions}
        unit={fields.unit ?? null}
        onUnit={(unit) => change({ unit })}
        error={wrong?.why === 'unitUnknown' || wrong?.why === 'vast' ? undefined : said}
        unitError={wrong?.why === 'unitUnknown' ? said : undefined}
      />
      {wrong?.why === 'vast' && (
        <Notice kind="refusal">
          <p>{said}</p>
          <Button kind="quiet" onAct={() => change({ sure: true })}>
            Yes, it is that big
          </Button>
        </Notice>
      )}
      <Card lines={lines} />
      <p>
        <a className="kind-link" href={`#/food/lot/${id}`}>
          Back to the portions
        </a>
      </p>
    </Page>
  )
}

const doubtOf = (lot: Lot, past: boolean): 'past' | 'doubtful' | undefined =>
  past ? 'past' : lot.aside || lot.meltedOn ? 'doubtful' : undefined

const Card = ({ lines }: { readonly lines: readonly string[] }) => {
  const card = useRef<HTMLDivElement>(null)
  const [said, setSaid] = useState('')
  const text = lines.join('\n')
  return (
    <>
      <div className="bag-label friend-card" ref={card}>
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
      <Actions>
        <Button onAct={() => void handOn(text, card.current).then((how) => setSaid(how ? cardSaid[how] : ''))}>
          Send or copy it
        </Button>
        <Button kind="quiet" onAct={() => window.print()}>
          Print it
        </Button>
      </Actions>
      <output className="said">{said}</output>
    </>
  )
}
