/** A name as typed: any she likes, so long as there is one. */
import { ok, type Result } from '../../../core/index.ts'
import { type Trouble, trouble } from './useAct.ts'

/** Far beyond a name, and short enough for every list it will stand in. */
const longest = 1_000

export const readName = (typed: string, at: string): Result<string, Trouble> => {
  const name = typed.trim()
  if (name === '') return trouble(at, { why: 'nameMissing' })
  return name.length > longest ? trouble(at, { why: 'nameTooLong' }) : ok(name)
}
