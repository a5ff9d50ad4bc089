/** The page to show, in words: how often it was fed, when, and what that came to. */
import { type Day, lampNight, type TankDescribed, type TankYear, type World } from '../../core/index.ts'
import { clock, dayInFull } from './dates.ts'
import { dosesWords } from './entries.ts'
import { capital, plural } from './numbers.ts'
import type { Reading } from './reading.ts'
import { purseWords, unpricedDoses } from './year.ts'

/** "41 feedings since 25 August 2026, the last on 24 November 2026." */
export const fedWords = (feedings: readonly Day[], since: Day): string =>
  `${plural(feedings.length, 'feeding', 'feedings')} since ${dayInFull(since)}, the last on ${dayInFull(feedings.at(-1) ?? since)}.`

/** "The food for it came to £14.20." Undefined where no price is known, and nothing was given. */
export const costSince = ({
  doses,
  cost,
  unpriced,
}: Pick<TankYear, 'doses' | 'cost' | 'unpriced'>): string | undefined => {
  if (doses === 0) return undefined
  const sum = purseWords(cost)
  if (sum === undefined) return unpriced > 0 ? 'What the food cost is not known.' : 'The food for it was free.'
  const part = unpriced > 0 ? ` ${unpricedDoses(unpriced)}` : ''
  return `The food for ${dosesWords(doses)} came to ${sum}.${part}`
}

/** When it goes in, by the lamp. */
export const lampHourWords = (world: World, tank: TankDescribed, { today }: Pick<Reading, 'today'>): string => {
  const { out, unsure } = lampNight(world, tank, today)
  return capital(unsure ? 'given after lights-out.' : `given after lights-out, now at ${clock(out, tank.zone)}.`)
}
