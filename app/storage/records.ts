/** From records to entries. What today's codec has passed is trusted; the rest is read again, and never lost. */
import { codecVersion, type Held } from '../../core/index.ts'
import type { Sealed, Stored } from './schema.ts'

let decode: ((raw: unknown) => Held | undefined) | undefined
/** Before a transaction, never inside one: it would be left idle and commit. */
export const loadCodec = async (): Promise<void> => {
  if (decode === undefined) ({ decodeEntry: decode } = await import('./codec.ts'))
}

/** True if some of these were written by another version of the app and the codec is not here yet. */
export const needsCodec = (records: readonly (Stored | Sealed)[]): boolean =>
  decode === undefined && records.some(({ codec }) => codec !== codecVersion)

export const toStored = (entry: Held): Stored => ({ entry, codec: codecVersion })

export const fromStored = ({ entry, codec }: Stored): Held => (codec === codecVersion ? entry : readAgain(entry))

/** As it stands: a text keeps what was stored, whichever codec it was stored under. */
export const toSealed = (stored: readonly Stored[], codec: number): Sealed => ({
  text: JSON.stringify(stored.map(({ entry }) => entry)),
  codec,
})

export const fromSealed = ({ text, codec }: Sealed): readonly Held[] => {
  const entries: readonly Held[] = JSON.parse(text)
  return codec === codecVersion ? entries : entries.map(readAgain)
}

/** What was unread may be readable by now; what was read may no longer be, and is then kept word for word. */
const readAgain = (held: Held): Held => {
  if (decode === undefined) throw new Error('The codec was not loaded before reading')
  const raw = 'fact' in held ? held : held.unread
  return decode(raw) ?? { id: held.id, unread: raw }
}
