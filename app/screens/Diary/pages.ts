/** The book from its last page back: read only as far as it is looked at, and on from there. */
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
export type DiaryPages = { readonly days: readonly DiaryDay[]; readonly shown: number; readonly older: boolean }

export type LookedFor = {
  /** Nothing of this moment or later. */
  readonly before?: Moment | undefined
  readonly wanted?: ((fact: Fact, struck: boolean) => boolean) | undefined
}

const endOfTime = Number.POSITIVE_INFINITY as Moment

/** Whether an entry has a line. Crossing-outs stand with what they cross out, unless that is not here. */
const lineOf = ({ all, struck }: History<Fact>, { before = endOfTime, wanted }: LookedFor) => {
  // Most households cross out little, and most pages meet none of it.
  let here: ReadonlySet<Stamp> | undefined
  const standsAlone = (target: Stamp): boolean => {
    here ??= new Set(all.map(({ id }) => id))
    return !here.has(target)
  }
  return (entry: Entry<Fact>): DiaryLine | undefined => {
    const { id, fact } = entry
    if (fact.at >= before || (fact.kind === 'entryStruckOut' && !standsAlone(fact.target))) return undefined
    const strike = struck.get(id)
    return !wanted || wanted(fact, strike !== undefined) ? { entry, struck: strike } : undefined
  }
}

/** Asked for more, it reads on where it stopped; lines given once are given again as they are. */
export const diaryReader = (
  history: History<Fact>,
  zone: Zone,
  looked: LookedFor = {},
): ((most: number) => DiaryPages) => {
  const lineFor = lineOf(history, looked)
  const lines: (DiaryLine & { readonly day: Day })[] = []
  let index = history.all.length - 1
  return (most) => {
    // One more than is shown tells whether there is more.
    for (; index >= 0 && lines.length <= most; index -= 1) {
      const entry = history.all[index]
      const line = entry && lineFor(entry)
      if (line) lines.push({ ...line, day: wallDay(line.entry.fact.at, zone) })
    }
    const days: { readonly day: Day; readonly lines: DiaryLine[] }[] = []
    for (const line of lines.slice(0, most)) {
      const last = days.at(-1)
      if (last?.day === line.day) last.lines.push(line)
      else days.push({ day: line.day, lines: [line] })
    }
    return { days, shown: Math.min(most, lines.length), older: lines.length > most }
  }
}

/** How many lines there are in all. */
export const countLines = (history: History<Fact>, looked: LookedFor = {}): number => {
  const lineFor = lineOf(history, looked)
  let count = 0
  for (const entry of history.all) if (lineFor(entry)) count += 1
  return count
}

const paperwork: ReadonlySet<FactKind> = new Set(['entryStruckOut', 'questionSettled', 'phoneNamed', 'clashNoted'])

/** The last thing that happened and stands: dated no later than now, and more than paperwork. */
export const lastHappened = ({ all, struck }: History<Fact>, now: Moment): Entry<Fact> | undefined =>
  all.findLast(({ id, fact }) => fact.at <= now && !paperwork.has(fact.kind) && !struck.has(id))
