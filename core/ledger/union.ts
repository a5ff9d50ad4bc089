/**
 * Merging is set union by id: commutative, associative, idempotent, so that any two phones that have seen the same entries
 * hold the same ledger, whichever way a file travelled.
 */
import type { Stamp } from './stamp.ts'

type Body = { readonly id: Stamp }

/** JSON with its keys in order: two texts of one body are the same body. */
export const canonical = (value: unknown): string =>
  JSON.stringify(value, (_key, part) =>
    part !== null && typeof part === 'object' && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  )

/** Almost always the very same text; keys are put in order only where it is not. */
const sameBody = (a: unknown, b: unknown): boolean =>
  JSON.stringify(a) === JSON.stringify(b) || canonical(a) === canonical(b)

export type Union<Any extends Body> = {
  readonly entries: readonly Any[]
  readonly added: readonly Any[]
  readonly already: number
  /** The same id with another body: ours is kept, and both are shown. */
  readonly clashes: readonly { readonly ours: Any; readonly theirs: Any }[]
}

export const union = <Any extends Body>(ours: readonly Any[], theirs: readonly Any[]): Union<Any> => {
  const known = new Map(ours.map((entry) => [entry.id, entry]))
  const added: Any[] = []
  const clashes: { ours: Any; theirs: Any }[] = []
  let already = 0
  for (const entry of theirs) {
    const mine = known.get(entry.id)
    if (mine === undefined) {
      known.set(entry.id, entry)
      added.push(entry)
    } else if (sameBody(mine, entry)) already += 1
    else clashes.push({ ours: mine, theirs: entry })
  }
  return { entries: [...ours, ...added], added, already, clashes }
}
