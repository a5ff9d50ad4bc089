/**
 * Reads entries from outside: from the phone's own store, from a file, from another phone. What it cannot read it keeps.
 * Nothing is converted, so an entry written back is the entry that was read, fields of newer versions included.
 * When a kind gets a new shape under a new name, the step that lifts the old one will stand between `isFactKind` and its
 * shape, and the body as written must stay beside the lifted one: one id has one body, and that one is exported.
 */
import * as v from 'valibot'
import { moment, stamp } from './codec/fields.ts'
import { isJson } from './codec/json.ts'
import { isFactKind, shapes } from './codec/shapes.ts'
import type { Fact } from './facts.ts'
import type { Held } from './held.ts'

export { factKinds } from './codec/shapes.ts'

const kindName = v.pipe(v.string(), v.regex(/^[A-Za-z]\w{0,99}$/))
const envelope = v.looseObject({ id: stamp, fact: v.looseObject({ kind: kindName, at: moment }) })

/** Undefined: malformed, neither ours nor a newer version's. */
export const decodeEntry = (raw: unknown): Held | undefined => {
  // `unread` is the one name that says how we hold an entry; a line that brings its own would pass for another.
  if (!v.is(envelope, raw) || !isJson(raw) || 'unread' in raw) return undefined
  const { fact } = raw
  if (!isFactKind(fact.kind)) return { id: raw.id, unread: raw }
  const shape: v.GenericSchema<Fact> = shapes[fact.kind]
  return v.is(shape, fact) ? { ...raw, fact } : undefined
}
