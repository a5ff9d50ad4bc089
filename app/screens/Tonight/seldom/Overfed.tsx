/** More than the label's range reached the tank: the next night waits, unless she would rather keep it. */
import { absurdRatio, chooseNext, type Day, type Overfed as Much, type TonightLine } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { dayOfMonth } from '../../../words/dates.ts'
import { farTooMuchWords, overfedWords } from '../../../words/nights.ts'
import type { Dosing } from '../useDosing.ts'

type OverfedProps = { readonly line: TonightLine; readonly much: Much; readonly dosing: Dosing }

export const Overfed = ({ line, much, dosing }: OverfedProps) => {
  const { plan } = line.plan
  const far = much.total > much.top * absurdRatio
  const choose = (next: Day) => () =>
    void dosing.record((world, { now }) => chooseNext(world, { plan, after: much.night, next }, now), {
      plan,
      did: 'chosen',
    })
  return (
    <Notice kind={far ? 'caution' : 'note'}>
      {far && (
        <p>
          {farTooMuchWords} <a href={`#/food/too-much/${plan}`}>What to do now</a>
        </p>
      )}
      <p>{overfedWords(much)}</p>
      <Actions>
        <Button kind="quiet" waiting={dosing.busy} onAct={choose(much.usual)}>
          Keep {dayOfMonth(much.usual)}
        </Button>
        <Button kind="quiet" waiting={dosing.busy} onAct={choose(much.suggested)}>
          Wait until {dayOfMonth(much.suggested)}
        </Button>
      </Actions>
    </Notice>
  )
}
