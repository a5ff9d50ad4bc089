/** Everything but the usual, by touch alone: no typing in the dark. What it cannot say is written down exactly elsewhere. */
import { inPart, type Serving, type TonightLine, twiceOf, wholeOf } from '../../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../../parts/Actions.tsx'
import { inWords, millilitres } from '../../../words/numbers.ts'
import type { Reading } from '../../useReading.ts'
import type { Dosing } from '../useDosing.ts'
import { Half } from './Half.tsx'
import { PutRight } from './PutRight.tsx'
import { Sources } from './Sources.tsx'

export type OtherwiseProps = {
  readonly line: TonightLine
  readonly serving: Serving | undefined
  readonly reading: Reading
  readonly dosing: Dosing
}

export const Otherwise = (props: OtherwiseProps) => {
  const { line, serving, dosing } = props
  const { is } = line.state
  return (
    <>
      {is === 'due' && <Due {...props} />}
      {is === 'done' && <PutRight {...props} />}
      {is !== 'due' && serving && (
        <Actions>
          <Button kind="quiet" waiting={dosing.busy} onAct={() => void dosing.dosed(line, serving)}>
            {is === 'done' ? 'Dosed once more' : 'Dosed all the same'}
          </Button>
        </Actions>
      )}
      <Actions>
        <ButtonLink kind="quiet" href={`#/dose/${line.plan.plan}`}>
          Write it down exactly
        </ButtonLink>
        <ButtonLink kind="quiet" href={`#/food/too-much/${line.plan.plan}`}>
          Far too much went in
        </ButtonLink>
        <ButtonLink kind="quiet" href="#/food/wrong">
          Thawed, off, or no label
        </ButtonLink>
      </Actions>
    </>
  )
}

const Due = ({ line, serving, reading, dosing }: OtherwiseProps) => {
  const portion = serving?.taken.from === 'portions'
  return (
    <>
      <Actions>
        <Button kind="quiet" onAct={() => void dosing.skipped(line)}>
          Skipped tonight
        </Button>
        {serving && (
          <Button kind="quiet" onAct={() => void dosing.dropped(line, serving)}>
            {portion ? 'Dropped one: take another' : 'Spilt a dose of it'}
          </Button>
        )}
        <Button kind="quiet" onAct={() => void dosing.unknown(line)}>
          I can’t remember
        </Button>
      </Actions>
      {serving && (
        <Actions>
          <Button kind="quiet" onAct={() => void dosing.give(line, twiceOf(serving))}>
            {serving.taken.from === 'bottle' ? 'Gave twice as much' : `Gave ${inWords(serving.taken.count * 2)}`}
          </Button>
          {inPart(serving) && (
            <Button kind="quiet" onAct={() => void dosing.give(line, wholeOf(serving))}>
              Gave the whole portion, {millilitres(wholeOf(serving).amount)}
            </Button>
          )}
          <Half line={line} serving={serving} reading={reading} dosing={dosing} />
        </Actions>
      )}
      <Sources line={line} serving={serving} reading={reading} dosing={dosing} />
    </>
  )
}
