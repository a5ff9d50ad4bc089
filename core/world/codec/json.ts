/**
 * What a line of text can hold and give back. Unknown fields and unknown facts are kept whatever they are, so they must not
 * be able to break a later write: a value nested deep enough makes JSON.stringify throw, and 1e400 comes back as null.
 */

/** The deepest fact of ours is five. */
const deepest = 32

export const isJson = (value: unknown, depth = 0): boolean => {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return true
  if (typeof value === 'number') return Number.isFinite(value)
  if (typeof value !== 'object' || depth === deepest) return false
  for (const part of Array.isArray(value) ? value : Object.values(value)) if (!isJson(part, depth + 1)) return false
  return true
}

/** JSON's own reading. Undefined for a text that is not JSON, however it fails. */
export const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
