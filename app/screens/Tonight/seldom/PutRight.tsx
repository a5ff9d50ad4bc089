/** The dose noted last tonight, for this tank: put right where it was done. */
import {
  finishBottle,
  givenOf,
  lastNoted,
  strikeOut,
  type TonightLine,
  tanksAt,
  writeAgain,
} from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { tankName } from '../../../words/names.ts'
import { lastNotedWords } from '../../../words/tonight.ts'
import type { Reading } from '../../useReading.ts'
import type { Dosing } from '../useDosing.ts'

type PutRightProps = { readonly line: TonightLine; readonly reading: Reading; readonly dosing: Dosing }

export const PutRight = ({ line, reading, dosing }: PutRightProps) => {
  const { world, now } = reading
  const { plan, tank } = line
  const given = line.state.is === 'done' ? givenOf(line.state.marks) : []
  const mark = lastNoted(given)
  const fact = mark && world.history.all.findLast(({ id }) => id === mark.entry)?.fact
  if (!mark || (fact?.kind !== 'doseGiven' && fact?.kind !== 'doseGivenOffPlan')) return null
  const others = tanksAt(world, now).filter((other) => other.tank !== tank.tank)
  const [taken, ...more] = fact.taken
  const only = more.length === 0 ? taken : undefined
  return (
    <>
      {given.length > 1 && <p>{lastNotedWords(mark, tank.zone)}</p>}
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
            onAct={() => void dosing.moved(line, { entry: mark.entry, to: other })}
          >
            Wrong tank: it went into {tankName(world, other, now)}
          </Button>
        ))}
      </Actions>
    </>
  )
}
