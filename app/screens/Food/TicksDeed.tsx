/** On a bag's own page: what the pen has ticked on it. */
import { useState } from 'react'
import { MoreExact } from '../../parts/MoreExact.tsx'
import type { LotDeedProps } from './LotActs.tsx'
import { TicksForm } from './paper/TicksForm.tsx'

export const TicksDeed = ({ lot, onDone }: LotDeedProps) => {
  const [times, setTimes] = useState(0)
  return (
    <MoreExact key={times} label="Ticks made with a pen">
      <TicksForm
        lot={lot}
        onDone={(...done) => {
          setTimes(times + 1)
          onDone(...done)
        }}
      />
    </MoreExact>
  )
}
