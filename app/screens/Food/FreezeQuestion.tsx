/** What does not go together is asked once, with the answers as buttons; nothing typed is lost. */
import { Actions, Button } from '../../parts/Actions.tsx'
import { dayInFull } from '../../words/dates.ts'
import { millilitres, typedMillilitres } from '../../words/numbers.ts'
import type { FreezeFields } from './freezeFields.ts'
import { Refused } from './Refused.tsx'
import type { Confirmed } from './readMade.ts'
import type { Act } from './useAct.ts'

type FreezeQuestionProps = {
  readonly act: Act
  readonly save: (changed: Partial<FreezeFields>, sure?: Confirmed) => Promise<void>
}

export const FreezeQuestion = ({ act, save }: FreezeQuestionProps) => (
  <>
    <Refused act={act}>
      <Answers act={act} save={save} />
    </Refused>
    {act.refusal?.why === 'outOfOrder' && <Answers act={act} save={save} />}
  </>
)

const Answers = ({ act: { refusal, busy }, save }: FreezeQuestionProps) => {
  switch (refusal?.why) {
    case 'frozenLate':
      return (
        <Actions>
          <Button kind="quiet" waiting={busy} onAct={() => save({}, { lateIsFine: true })}>
            It is so: 12 months
          </Button>
        </Actions>
      )
    case 'notForFreezing':
      return (
        <Actions>
          <Button kind="quiet" waiting={busy} onAct={() => save({}, { freezeAnyway: true })}>
            I froze it all the same
          </Button>
        </Actions>
      )
    case 'outOfOrder': {
      const { swapped } = refusal
      return swapped ? (
        <Actions>
          <Button kind="quiet" waiting={busy} onAct={() => save({ frozenOn: swapped })}>
            It was {dayInFull(swapped)}
          </Button>
        </Actions>
      ) : null
    }
    case 'moreThanBottleHeld': {
      const real = typedMillilitres(refusal.eachWouldBe)
      const each = millilitres(refusal.eachWouldBe)
      return (
        <Actions>
          <Button kind="quiet" waiting={busy} onAct={() => save({ each: real })}>
            Each really holds {each}
          </Button>
          <Button kind="quiet" waiting={busy} onAct={() => save({ each: real })}>
            I thinned it: {each} of food in each
          </Button>
          <Button kind="quiet" waiting={busy} onAct={() => save({}, { bottleHeldMore: true })}>
            The bottle held more
          </Button>
        </Actions>
      )
    }
    default:
      return null
  }
}
