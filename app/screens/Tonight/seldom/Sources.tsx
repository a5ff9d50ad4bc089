/** Taken from somewhere else than what is proposed. */
import { comesFrom, pastServings, type Serving, sourcesOf, type TonightLine } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { takeWords } from '../../../words/tonight.ts'
import type { Reading } from '../../useReading.ts'
import type { Dosing } from '../useDosing.ts'

type SourcesProps = {
  readonly line: TonightLine
  readonly serving: Serving | undefined
  readonly reading: Reading
  readonly dosing: Dosing
}

export const Sources = ({ line, serving, reading, dosing }: SourcesProps) => {
  const { world, now } = reading
  const others = line.servings.filter((other) => other !== serving)
  const past = serving ? pastServings(sourcesOf(world, line.food.food, now), line.plan.amount, line.night) : []
  if (serving && others.length === 0 && past.length === 0) return null
  return (
    <Actions>
      {!serving && (
        <Button kind="quiet" onAct={() => void dosing.dosed(line, undefined)}>
          Dosed from something not on record
        </Button>
      )}
      {others.map((other) => (
        <Button kind="quiet" key={comesFrom(other.taken)} onAct={() => dosing.take(other)}>
          {`Use instead: ${takeWords(other, world, now)}`}
        </Button>
      ))}
      {past.map((other) => (
        <Button kind="quiet" key={comesFrom(other.taken)} onAct={() => void dosing.dosed(line, other)}>
          {`Took ${takeWords(other, world, now)}, past its day`}
        </Button>
      ))}
    </Actions>
  )
}
