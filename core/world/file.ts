/** Reads a ledger from a file, whole or not at all. A file has travelled: it may be cut short, edited, newer or hostile. */
import * as v from 'valibot'
import type { DeviceId } from '../basis/ids.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Moment } from '../basis/zones.ts'
import type { Stamp } from '../ledger/stamp.ts'
import { canonical } from '../ledger/union.ts'
import { id, moment, text, whole as wholeNumber } from './codec/fields.ts'
import { parsed } from './codec/json.ts'
import { decodeEntry } from './codec.ts'
import { encodeEntry, type Held, isUnread } from './held.ts'

export type FileHeader = { readonly at: Moment; readonly device: DeviceId; readonly version: string }
/** For whoever opens the file: how many pictures its entries tell of, and how many of them travel beside it. */
export type PicturesBeside = { readonly told: number; readonly inside: number }
export type LedgerFile = {
  readonly header: FileHeader
  readonly entries: readonly Held[]
  /** How many of them only a newer version reads. */
  readonly unread: number
}

const file = 'smallhours-ledger'
const format = 1
/** About half a million entries: beyond it a phone runs out of memory before it runs out of patience. */
const mostCharacters = 128 * 1024 * 1024
/** The largest fact there can be is half of this. */
const longestLine = 4 * 1024 * 1024

/** A header line, then one entry a line in the order of their stamps. */
export const exportLedger = (
  entries: readonly Held[],
  { at, device, version }: FileHeader,
  photos?: PicturesBeside,
): string => {
  const sorted = [...entries].sort((a, b) => (a.id < b.id ? -1 : 1))
  const header = { file, format, at, device, version, entries: sorted.length, ...(photos ? { photos } : {}) }
  return [header, ...sorted.map(encodeEntry)].map((line) => `${JSON.stringify(line)}\n`).join('')
}

const anyHeader = v.looseObject({ file: v.literal(file), format: wholeNumber(1, 1_000_000) })
const ourHeader = v.looseObject({
  at: moment,
  device: id<DeviceId>(),
  version: text,
  entries: wholeNumber(0, 10_000_000),
})

export const readLedgerFile = (contents: string): Result<LedgerFile, ImportRefusal> => {
  if (contents.length > mostCharacters) return refuse({ why: 'tooLarge', most: mostCharacters })
  // Mail programs and editors add a byte order mark, carriage returns, empty lines at the end.
  const whole = contents.replace(/^\uFEFF/, '').trimEnd()
  if (whole === '') return refuse({ why: 'empty' })
  const headerEnds = whole.indexOf('\n')
  const header = readLine(headerEnds < 0 ? whole : whole.slice(0, headerEnds))
  if (!v.is(anyHeader, header)) return refuse({ why: 'notALedger' })
  if (header.format > format) return refuse({ why: 'newerFormat', format: header.format })
  if (!v.is(ourHeader, header)) return refuse({ why: 'notALedger' })
  const expected = header.entries
  const lines = headerEnds < 0 ? [] : whole.slice(headerEnds + 1).split('\n', expected + 1)
  if (lines.length < expected) return refuse({ why: 'cutShort', expected, found: lines.length })
  const held = new Map<Stamp, Held>()
  for (const [index, line] of lines.entries()) {
    const raw = readLine(line)
    const cut = raw === undefined && index === lines.length - 1 && !contents.endsWith('\n')
    if (cut && index < expected) return refuse({ why: 'cutShort', expected, found: index })
    const entry = index < expected ? decodeEntry(raw) : undefined
    if (entry === undefined) return refuse({ why: 'brokenLine', line: index + 2 })
    const before = held.get(entry.id)
    if (before && canonical(before) !== canonical(entry)) return refuse({ why: 'sameIdTwice', line: index + 2 })
    held.set(entry.id, before ?? entry)
  }
  const entries = [...held.values()]
  const { at, device, version } = header
  return ok({ header: { at, device, version }, entries, unread: entries.filter(isUnread).length })
}

/** Lines count from 1, the header being the first. */
export type ImportRefusal =
  | { readonly why: 'empty' }
  | { readonly why: 'notALedger' }
  | { readonly why: 'newerFormat'; readonly format: number }
  | { readonly why: 'cutShort'; readonly expected: number; readonly found: number }
  /** Not an entry, or one more than the header promises. */
  | { readonly why: 'brokenLine'; readonly line: number }
  /** Two bodies under one id: no telling which is meant. */
  | { readonly why: 'sameIdTwice'; readonly line: number }
  | { readonly why: 'tooLarge'; readonly most: number }

const readLine = (line: string): unknown => (line.length > longestLine ? undefined : parsed(line))
