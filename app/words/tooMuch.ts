/** Far too much went in: the steps first, figures last. */
import type { Nutrients, UpTo } from '../../core/index.ts'
import { toDecimals } from './numbers.ts'

/** In this order. Common practice, no source. */
export const tooMuchSteps = [
  'Air and flow up now: an air stone, wave pumps on, lid open.',
  'The skimmer on, set to run wet.',
  'Fresh carbon, if you have it.',
  'The lights stay off.',
  'Small water changes, a tenth at a time, from tonight on.',
  'Feed nothing else. Pods and fish go without for days and take no harm.',
  'In the morning: look, smell, and test ammonia.',
] as const

export const handsDry = 'Dry hands at plugs and switches; unplug before hands go into the water.'
export const gasping =
  'Fish that gasp at the surface, or lie on their side: more air first, then call a vet who knows fish, or somebody with experience. This page is no vet.'

/** "0.41", "0.0041": two figures are all an estimate has. */
const figure = (value: number): string => (value >= 0.1 ? toDecimals(value, 2) : String(Number(value.toPrecision(2))))
const upTo = (name: string, { low, high }: UpTo): string =>
  `${name} at most ${low === high || figure(low) === figure(high) ? '' : `${figure(low)} to `}${figure(high)} ppm`

/** "Nitrate at most 3.98 ppm more, phosphate at most 0.41 ppm more." */
export const nutrientWords = ({ nitrate, phosphate }: Nutrients): string =>
  `${upTo('Nitrate', nitrate)} more, ${upTo('phosphate', phosphate)} more.`
export const upperEstimate =
  'An upper estimate, not a forecast: as if all of it broke down, and nothing were eaten, skimmed off or changed out. What else is in the bottle comes on top.'
