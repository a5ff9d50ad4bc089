/** Where and when a person reads a sentence. */
import type { Day, Zone } from '../../core/index.ts'

export type Reading = { readonly today: Day; readonly zone: Zone }
