/** A dose that was refused: what is asked about it, and each way on. */
import { type DoseRefusal, type FoodId, sniffDays, sourcesOf } from '../../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../../parts/Actions.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { doseRefusalText, willBearWords } from '../../../words/dose.ts'
import { bottleName } from '../../../words/names.ts'
import type { Reading as Words } from '../../../words/reading.ts'
import type { Reader } from '../../../words/tonight.ts'
import { FarAbove, Sure, type Ways as WaysOn } from './Doubts.tsx'

type RefusedProps = {
  readonly refusal: DoseRefusal
  readonly food: FoodId
  /** A word of why is there already. */
  readonly told?: boolean
  readonly reader: Reader
  readonly reading: Words
  readonly ways: WaysOn
}

export const Refused = ({ refusal, food, told = false, reader, reading, ways }: RefusedProps) => (
  <Notice kind="refusal">
    <p>{doseRefusalText(refusal, reader, reading)}</p>
    {refusal.why in overrides && <p>{willBearWords(reader)}</p>}
    <Ways key={refusal.why} refusal={refusal} food={food} told={told} reader={reader} ways={ways} />
    <Actions>
      <Button kind="quiet" onAct={ways.onLeave}>
        Leave it
      </Button>
    </Actions>
  </Notice>
)

/** What is noted all the same, and bears a mark for it. */
const overrides: Partial<Record<DoseRefusal['why'], true>> = {
  aboveRange: true,
  farAboveRange: true,
  pastItsDay: true,
  fromAside: true,
}

type WaysProps = Omit<RefusedProps, 'reading' | 'told'> & { readonly told: boolean }

const Ways = ({ refusal, food, told, reader, ways }: WaysProps) => {
  switch (refusal.why) {
    case 'alreadyGiven':
      return (
        <Actions>
          <Button onAct={() => ways.onSure({ again: true })}>That was another one: note it too</Button>
        </Actions>
      )
    case 'aboveRange':
      return <Sure reasons={['rich', 'stuck', 'notNoted']} told={told} ways={ways} />
    case 'farAboveRange':
      return <FarAbove asked={refusal.asked} top={refusal.top} told={told} ways={ways} />
    case 'pastItsDay':
      return (
        <Sure
          {...(refusal.days > sniffDays ? { label: 'How did it come about? It may be skipped.' } : {})}
          reasons={['sniffed', 'notNoted']}
          told={told}
          ways={ways}
        />
      )
    case 'fromAside':
      return (
        <Sure
          reasons={['sniffed', 'notNoted']}
          told={told}
          ways={{ ...ways, onSure: (more) => ways.onSure({ ...more, asideIsFine: true }) }}
        />
      )
    case 'moreThanBottleHolds': {
      const others = sourcesOf(reader.world, food, reader.now).flatMap((source) =>
        source.from === 'bottle' && source.bottle !== refusal.bottle && source.left >= refusal.asked
          ? [source.bottle]
          : [],
      )
      return (
        <Actions>
          {others.map((bottle) => (
            <Button key={bottle} kind="quiet" onAct={() => ways.onBottle(bottle)}>
              It came from {bottleName(reader.world, bottle, reader.now)}
            </Button>
          ))}
          {refusal.holds > 0 && (
            <Button kind="quiet" onAct={ways.onHeldMore}>
              The bottle held more: it is empty now
            </Button>
          )}
          <Button kind="quiet" onAct={() => ways.onSure({ aside: true })}>
            Note it; I’ll look later
          </Button>
        </Actions>
      )
    }
    case 'notYet':
      return <p>A dose to come belongs in the plan: it will be due by itself.</p>
    case 'noSuchPlan':
      return <ButtonLink href="#/water">Look at the plans</ButtonLink>
    case 'nothingGiven':
    case 'wholePortions':
    case 'justRecorded':
      return null
  }
}
