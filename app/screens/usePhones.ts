/** The household's phones, seen from this one. */
import { useMatter } from '../state/device.ts'
import type { Phones } from '../words/phones.ts'
import type { Reading } from './useReading.ts'

export const usePhones = ({ world, now }: Pick<Reading, 'world' | 'now'>): Phones => {
  const device = useMatter('device')
  const formerly = useMatter('formerly') ?? []
  return { mine: device === undefined ? formerly : [device, ...formerly], world, now }
}
