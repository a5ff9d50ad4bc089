/** Lamps that do not do what they are meant to, and clocks that are about to change: a line each, and the way to the lamp. */
import { lampAsk, type TankDescribed } from '../../../../core/index.ts'
import { lampShort } from '../../../words/lamp.ts'
import type { Reading } from '../../useReading.ts'

type LampsProps = { readonly tanks: readonly TankDescribed[]; readonly reading: Reading }

export const Lamps = ({ tanks, reading: { world, now } }: LampsProps) =>
  tanks.map((tank) => {
    const ask = lampAsk(world, tank, now)
    if (!ask) return null
    return (
      <p key={tank.tank}>
        {lampShort(ask, tanks.length > 1)}{' '}
        <a href="#/water">
          Look at the lamp<span className="for-ears">: {tank.name}</span>
        </a>
      </p>
    )
  })
