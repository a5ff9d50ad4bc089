/** Everything but the usual, by touch alone: no typing in the dark. What it cannot say is written down exactly elsewhere. */
import {
  finishBottle,
  inPart,
  moveDose,
  type Serving,
  strikeOut,
  type TonightLine,
  tanksAt,
  twiceOf,
  wholeOf,
  writeAgain,
} from '../../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../../parts/Actions.tsx'
import { tankName } from '../../../words/names.ts'
import { inWords, millilitres } from '../../../words/numbers.ts'
import type { Reading } from '../../useReading.ts'
import type { Dosing } from '../useDosing.ts'
import { Half } from './Half.tsx'
import { Sources } from './Sources.tsx'

type OtherwiseProps = {
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
      {is === 'done' && <Done {...props} />}
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

/** The last dose noted tonight, for this tank: put right where it was done. */
const Done = ({ line, reading, dosing }: OtherwiseProps) => {
  const { world, now } = reading
  const { plan, tank } = line
  const mark = line.state.is === 'done' ? line.state.marks.findLast(({ what }) => what === 'given') : undefined
  const fact = mark && world.history.all.findLast(({ id }) => id === mark.entry)?.fact
  if (!mark || (fact?.kind !== 'doseGiven' && fact?.kind !== 'doseGivenOffPlan')) return null
  const others = tanksAt(world, now).filter((other) => other.tank !== tank.tank)
  const [taken, ...more] = fact.taken
  const only = more.length === 0 ? taken : undefined
  return (
    <Actions>
      {only?.from === 'portions' && (
        <Button
          kind="quiet"
          waiting={dosing.busy}
          onAct={() =>
            void dosing.record((latest, at) => strikeOut(latest, { target: mark.entry, why: 'putBack' }, at.now), {
              plan: plan.plan,
              did: 'putBack',
              // It was out after all: a crossing-out cannot be crossed out, so it is written again.
              back: () => (latest) => writeAgain(latest, mark.entry),
            })
          }
        >
          {only.count === 1 ? 'It went back, still hard' : 'They went back, still hard'}
        </Button>
      )}
      {only?.from === 'bottle' && !world.bottles.get(only.bottle)?.finished && (
        <Button
          kind="quiet"
          waiting={dosing.busy}
          onAct={() =>
            void dosing.record((latest, at) => finishBottle(latest, only.bottle, at.now), {
              plan: plan.plan,
              did: 'emptied',
            })
          }
        >
          That was the last of the bottle
        </Button>
      )}
      {others.map(({ tank: other }) => (
        <Button
          key={other}
          kind="quiet"
          waiting={dosing.busy}
          onAct={() =>
            void dosing.record(
              (latest, at) => moveDose(latest, { entry: mark.entry, from: tank.tank, to: other }, at.now),
              {
                plan: plan.plan,
                did: 'moved',
                back: (written) => (latest, at) =>
                  moveDose(latest, { entry: written.at(-1)?.id ?? mark.entry, from: other, to: tank.tank }, at.now),
              },
            )
          }
        >
          Wrong tank: it went into {tankName(world, other, now)}
        </Button>
      ))}
    </Actions>
  )
}
