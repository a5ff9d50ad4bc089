/** Where the phone thinks it is. Page and worker. */
import { isZone, type Zone } from '../../core/index.ts'

export const phoneZone = (): Zone => {
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone
  // A phone without a zone says "Etc/Unknown" or nothing.
  return isZone(zone) ? zone : ('UTC' as Zone)
}
