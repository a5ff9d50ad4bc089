/** What a count's form holds, and what the core makes of it: every wrong field at once. */
import {
  type CountAsked,
  type CountedRefusal,
  clockMinutes,
  isClockTime,
  isDay,
  type LookedAsked,
  type LookPart,
  type Moment,
  momentAt,
  momentOn,
  mostLooked,
  ok,
  type Result,
  readNumber,
  recordCount,
  refuse,
  type SmallLifeCounted,
  type TankDescribed,
  type TankId,
  tally,
  tankKept,
  type World,
  wallDay,
} from '../../../core/index.ts'
import type { LifeRefusal } from '../../words/life.ts'

export type Wrong = Readonly<Record<string, LifeRefusal>>
export type LifeTrouble = { readonly why: 'fields'; readonly at: Wrong }
export const inFields = (at: Wrong) => refuse<LifeTrouble>({ why: 'fields', at })

/** When and where; an empty day is today, an empty clock now. */
export type AboutFields = {
  readonly where: string
  readonly words: string
  readonly day: string
  readonly clock: string
}
export const noAbout: AboutFields = { where: '', words: '', day: '', clock: '' }

export const whenOf = ({ day, clock }: AboutFields, { zone }: TankDescribed, now: Moment): Moment => {
  const meant = isDay(day) ? day : undefined
  if (isClockTime(clock)) return momentAt(meant ?? wallDay(now, zone), clockMinutes(clock), zone)
  return meant ? momentOn(meant, { now, zone }) : now
}

export type CountFields = AboutFields & {
  readonly counts: readonly string[]
  readonly width: string
  readonly height: string
  readonly litres: string
  readonly rinsedInto: string
  readonly lookedAt: string
  readonly sieve: string
  /** Per cent. */
  readonly kept: string
  /** By torch: when the first pane was begun. */
  readonly began?: number | undefined
}
export const newCount: CountFields = {
  ...noAbout,
  counts: ['', '', ''],
  width: '10',
  height: '10',
  litres: '',
  rinsedInto: '50',
  lookedAt: '1',
  sieve: '',
  kept: '',
  began: undefined,
}

/** The field a count stands in. */
export const countField = (place: number): string => `count${place}`
/** A minute is what a pane is looked at by torch. Common practice, no source. */
export const torchSeconds = 60

/** Reads numbers and keeps what is wrong with each under its field. */
const reader = () => {
  const wrong: Record<string, LifeRefusal> = {}
  return {
    wrong,
    /** @param whole what is typed for one: 100 where it is per cent. */
    measure: (typed: string, field: string, of: LookPart, whole = 1): number => {
      const read = readNumber(typed)
      const most = mostLooked[of]
      if (!read.ok) {
        wrong[field] = read.refusal
        return 1
      }
      const given = read.value / whole
      if (!(given > 0 && given <= most)) wrong[field] = { why: 'lookOutOfRange', of, given, most }
      return given
    },
    counts: (typed: readonly string[]): readonly number[] =>
      typed.flatMap((text, place) => {
        if (text.trim() === '') return []
        const read = readNumber(text)
        const counted = read.ok ? tally([read.value]) : read
        if (!counted.ok) wrong[countField(place)] = counted.refusal
        return read.ok ? [read.value] : []
      }),
  }
}

export const readCount = (
  how: LookedAsked['how'],
  fields: CountFields,
): Result<Pick<CountAsked, 'looked' | 'counts'>, LifeTrouble> => {
  const { wrong, measure, counts: read } = reader()
  const counts = read(fields.counts)
  const frame = () => measure(fields.width, 'width', 'frame') * measure(fields.height, 'height', 'frame')
  const looked: LookedAsked =
    how === 'torch'
      ? { how, seconds: torchSeconds, frame: frame() }
      : how === 'pane'
        ? { how, frame: frame() }
        : {
            how,
            litres: measure(fields.litres, 'litres', 'litres'),
            rinsedInto: measure(fields.rinsedInto, 'rinsedInto', 'rinsedInto'),
            lookedAt: measure(fields.lookedAt, 'lookedAt', 'lookedAt'),
            ...(fields.sieve.trim() ? { sieve: measure(fields.sieve, 'sieve', 'sieve') } : {}),
            ...(fields.kept.trim() ? { kept: measure(fields.kept, 'kept', 'kept', 100) } : {}),
          }
  if (counts.length === 0 && !fields.counts.some((typed) => typed.trim()))
    wrong[countField(0)] = { why: 'nothingCounted' }
  return Object.keys(wrong).length > 0 ? inFields(wrong) : ok({ looked, counts })
}

/** The field a refusal of the core belongs to. */
const fieldOf = (refusal: CountedRefusal): string => {
  switch (refusal.why) {
    case 'noSuchTank':
      return ''
    case 'notYet':
      return 'clock'
    case 'wordsTooLong':
      return refusal.of
    case 'lookOutOfRange':
      return refusal.of === 'frame' ? 'width' : refusal.of
    case 'lookedAtMoreThanRinsed':
      return 'rinsedInto'
    default:
      return countField(0)
  }
}

export const sendCount =
  (tank: TankId, how: LookedAsked['how'], fields: CountFields) =>
  (world: World, { now }: { readonly now: Moment }): Result<readonly [SmallLifeCounted], LifeTrouble> => {
    const read = readCount(how, fields)
    if (!read.ok) return read
    const described = tankKept(world, tank, now)
    if (!described) return inFields({ '': { why: 'noSuchTank' } })
    const typed = fields.day !== '' || fields.clock !== ''
    const at = !typed && fields.began !== undefined ? (fields.began as Moment) : whenOf(fields, described, now)
    const { where, words } = fields
    const done = recordCount(world, { tank, at, ...read.value, where, words }, now)
    return done.ok ? done : inFields({ [fieldOf(done.refusal)]: done.refusal })
  }
