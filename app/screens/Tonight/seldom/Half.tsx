/** Half of one: what became of the other half is asked only where there is another tank for it. */
import { useState } from 'react'
import { halfOf, type Serving, type TonightLine, tanksAt } from '../../../../core/index.ts'
import { Button } from '../../../parts/Actions.tsx'
import type { Reading } from '../../useReading.ts'
import type { Dosing } from '../useDosing.ts'

type HalfProps = {
  readonly line: TonightLine
  readonly serving: Serving
  readonly reading: Reading
  readonly dosing: Dosing
}

export const Half = ({ line, serving, reading, dosing }: HalfProps) => {
  const [asking, setAsking] = useState(false)
  const { taken, amount, rest } = halfOf(serving)
  const others = tanksAt(reading.world, reading.now).filter(({ tank }) => tank !== line.tank.tank)
  if (serving.taken.from === 'bottle')
    return (
      <Button kind="quiet" onAct={() => void dosing.give(line, { taken, amount })}>
        Gave half as much
      </Button>
    )
  if (others.length === 0)
    return (
      <Button kind="quiet" onAct={() => void dosing.give(line, { taken, amount })}>
        Gave half, the rest thrown away
      </Button>
    )
  if (!asking)
    return (
      <Button kind="quiet" onAct={() => setAsking(true)}>
        Shared over two tanks, or gave half
      </Button>
    )
  return (
    <>
      <Button kind="quiet" onAct={() => void dosing.give(line, { taken, amount })}>
        The rest was thrown away
      </Button>
      {others.map(({ tank, name }) => (
        <Button
          key={tank}
          kind="quiet"
          onAct={() => void dosing.give(line, { taken, amount, shared: { tank, amount: rest } })}
        >
          The rest went into {name}
        </Button>
      ))}
    </>
  )
}
