/** Both clocks, where the phone's is not the tank's: the tank's rules. */
import { useEffect, useState } from 'react'
import type { TonightLine, Zone } from '../../../core/index.ts'
import { whenIdle } from '../../state/idle.ts'
import { phoneZone } from '../../state/phoneZone.ts'
import { bothClocks } from '../../words/bothClocks.ts'

export const Abroad = ({ line: { lightsOut, tank } }: { readonly line: TonightLine }) => {
  const [here, setHere] = useState<Zone>()
  // Asking a phone where it is takes it longer than drawing this page.
  useEffect(() => whenIdle(() => setHere(phoneZone())), [])
  const both = here && bothClocks(lightsOut, tank.zone, here)
  return both ? <p>Lights out: {both}.</p> : null
}
