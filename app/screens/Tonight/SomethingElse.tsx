/** Everything but the usual, behind one line: skipped, dropped, forgotten, taken from elsewhere. */
import { pastServings, type Serving, sourcesOf, type TonightLine } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { takeWords } from '../../words/tonight.ts'
import { useReading } from '../useReading.ts'
import { type Dosing, sourceOf } from './useDosing.ts'

type Props = { readonly line: TonightLine; readonly serving: Serving | undefined; readonly dosing: Dosing }

export const SomethingElse = ({ line, serving, dosing }: Props) => {
  const { world, now } = useReading()
  const { state } = line
  const due = state.is === 'due'
  if (!due && !serving) return null
  const others = line.servings.filter((other) => other !== serving)
  const past = pastServings(sourcesOf(world, line.food.food, now), line.plan.amount, line.night)
  return (
    <MoreExact label="Something else happened">
      <Actions>
        {due && (
          <>
            <Button kind="quiet" onAct={() => dosing.skipped(line)}>
              Skipped tonight
            </Button>
            {serving && (
              <Button kind="quiet" onAct={() => dosing.dropped(line, serving)}>
                {serving.taken.from === 'portions' ? 'Dropped one: take another' : 'Spilt a dose of it'}
              </Button>
            )}
            <Button kind="quiet" onAct={() => dosing.unknown(line)}>
              I can’t remember
            </Button>
          </>
        )}
        {!due && serving && (
          <Button kind="quiet" onAct={() => dosing.dosed(line, serving)}>
            {state.is === 'done' ? 'Dosed once more' : 'Dosed all the same'}
          </Button>
        )}
        {due && !serving && (
          <Button kind="quiet" onAct={() => dosing.dosed(line, undefined)}>
            Dosed from something not on record
          </Button>
        )}
        {due &&
          others.map((other) => (
            <Button kind="quiet" key={sourceOf(other)} onAct={() => dosing.take(other)}>
              {`Use instead: ${takeWords(other, world, now)}`}
            </Button>
          ))}
        {due &&
          past.map((other) => (
            <Button kind="quiet" key={sourceOf(other)} onAct={() => dosing.dosed(line, other)}>
              {`Took ${takeWords(other, world, now)}, past its day`}
            </Button>
          ))}
      </Actions>
    </MoreExact>
  )
}
