/** Ids come from the phone's randomness, here and nowhere else. Page and worker both use it. */
import type { DeviceId } from '../../core/index.ts'

const letters = '0123456789abcdefghijklmnopqrstuv'
/** Five bits a letter. */
const dice = (length: number): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(length)), (byte) => letters[byte & 31]).join('')

/** `newId<TankId>()`: 80 random bits, of which no household will ever see a pair alike. */
export const newId = <Id extends string>(): Id => dice(16) as Id
/** Shorter, for it stands in every stamp; only a household's few phones must differ. */
export const newDeviceId = (): DeviceId => dice(10) as DeviceId
