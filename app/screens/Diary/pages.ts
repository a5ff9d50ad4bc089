/** The book from its last page back: only as many lines as are looked at, however long the history is. */
import {
  type Day,
  type Entry,
  type EntryStruckOut,
  type Fact,
  type FactKind,
  type History,
  type Moment,
  type Stamp,
  wallDay,
  type Zone,
} from '../../../core/index.ts'

export type DiaryLine = { readonly entry: Entry<Fact>; readonly struck: Entry<EntryStruckOut> | undefined }
export type DiaryDay = { readonly day: Day; readonly lines: readonly DiaryLine[] }
export type DiaryPages = { readonly days: readonly DiaryDay[]; readonly older: boolean }

/** Entries written in the book: crossing-outs stand with what they cross out, unless that is not here. */
const hasOwnLine = ({ fact }: Entry<Fact>, here: ReadonlySet<Stamp>): boolean =>
  fact.kind !== 'entryStruckOut' || !here.has(fact.target)

/** @param before nothing of this moment or later, if given */
export const diaryPages = (
  { all, struck }: History<Fact>,
  zone: Zone,
  most: number,
  before: Moment = Number.POSITIVE_INFINITY as Moment,
): DiaryPages => {
  const here = new Set(all.map(({ id }) => id))
  const days: { readonly day: Day; readonly lines: DiaryLine[] }[] = []
  let shown = 0
  for (let index = all.length - 1; index >= 0; index--) {
    const entry = all[index]
    if (entry === undefined || entry.fact.at >= before || !hasOwnLine(entry, here)) continue
    if (shown === most) return { days, older: true }
    shown += 1
    const day = wallDay(entry.fact.at, zone)
    const line = { entry, struck: struck.get(entry.id) }
    const last = days.at(-1)
    if (last?.day === day) last.lines.push(line)
    else days.push({ day, lines: [line] })
  }
  return { days, older: false }
}

const paperwork: ReadonlySet<FactKind> = new Set(['entryStruckOut', 'questionSettled'])

/** The last thing that happened and stands: dated no later than now, and more than paperwork. */
export const lastHappened = ({ all, struck }: History<Fact>, now: Moment): Entry<Fact> | undefined =>
  all.findLast(({ id, fact }) => fact.at <= now && !paperwork.has(fact.kind) && !struck.has(id))
