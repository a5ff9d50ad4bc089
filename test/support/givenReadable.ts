/** A world as text a person can read and compare: maps become objects, in the order they are kept. */
import { fold, type Held, type World } from '../../core/index.ts'

const plainly = (_key: string, value: unknown): unknown =>
  value instanceof Map ? Object.fromEntries(value) : value === undefined ? null : value

/** Without its history, which is the ledger itself, but with the entries that are crossed out. */
export const readable = ({ history, ...world }: World): unknown =>
  JSON.parse(JSON.stringify({ ...world, struck: [...history.struck.keys()] }, plainly))

/** Order counts here: two texts are one only if everything stands in the same place. */
export const textOf = (entries: readonly Held[]): string => {
  const world = fold(entries)
  return JSON.stringify([world.history.all, readable(world)])
}
