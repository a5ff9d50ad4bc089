/** Half of one: what became of the other half is asked only where there is another tank for it. */
import { useState } from 'react'
import { type Serving, type TonightLine, tanksAt } from '../../../../core/index.ts'
import { Button } from '../../../parts/Actions.tsx'
import type { Reading } from '../../useReading.ts'
import type { Dosing } from '../useDosing.ts'
import { half } from './amounts.ts'

type HalfProps = {
  readonly line: TonightLine
  readonly serving: Serving
  readonly reading: Reading
  readonly dosing: Dosing
}

export const Half = ({ line, serving, reading, dosing }: HalfProps) => {
  const [asking, setAsking] = useState(false)
  const others = tanksAt(reading.world, reading.now).filter(({ tank }) => tank !== line.tank.tank)
  if (serving.taken.from === 'bottle')
    return (
      <Button kind="quiet" onAct={() => void dosing.give(line, half(serving))}>
        Gave half as much
      </Button>
    )
  if (others.length === 0)
    return (
      <Button kind="quiet" onAct={() => void dosing.give(line, half(serving))}>
        Gave half, the rest thrown away
      </Button>
    )
  if (!asking)
    return (
      <Button kind="quiet" onAct={() => setAsking(true)}>
        Gave half of it
      </Button>
    )
  return (
    <>
      <Button kind="quiet" onAct={() => void dosing.give(line, half(serving))}>
        The rest was thrown away
      </Button>
      {others.map(({ tank, name }) => (
        <Button key={tank} kind="quiet" onAct={() => void dosing.give(line, half(serving, tank))}>
          The rest went into {name}
        </Button>
      ))}
    </>
  )
}
