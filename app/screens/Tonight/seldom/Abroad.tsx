/** Both clocks, where the phone's is not the tank's: the tank's rules. */
import type { TonightLine } from '../../../../core/index.ts'
import { phoneZone } from '../../../state/phoneZone.ts'
import { bothClocks } from '../../../words/lamp.ts'

export const Abroad = ({ line: { lightsOut, tank } }: { readonly line: TonightLine }) => {
  const both = bothClocks(lightsOut, tank.zone, phoneZone())
  return both ? <p>Lights out: {both}.</p> : null
}
