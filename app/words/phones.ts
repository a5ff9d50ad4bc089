/** Which phone wrote it, as she calls it. */
import { type DeviceId, type Moment, phoneName, type Stamp, type World, writtenBy } from '../../core/index.ts'

/** `mine`: the ids this phone goes by now and went by before a restore. */
export type Phones = {
  readonly mine: readonly DeviceId[]
  readonly world: Pick<World, 'phones'>
  readonly now: Moment
}

/** "this phone", "kitchen phone"; "another phone" where nobody has named it. */
export const phoneWords = (device: DeviceId, { mine, world, now }: Phones): string =>
  mine.includes(device) ? 'this phone' : (phoneName(world, device, now) ?? 'another phone')

export const writtenOn = (entry: Stamp, phones: Phones): string => phoneWords(writtenBy(entry), phones)
