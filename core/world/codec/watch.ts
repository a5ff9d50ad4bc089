/** The shapes of what is recorded of the small life. */
import * as v from 'valibot'
import type { ParcelId, PhotoId, RunId, TankId } from '../../basis/ids.ts'
import { count, day, id, list, maybe, measure, moment, oneOf, stamp, text, whole } from './fields.ts'

const tank = id<TankId>()

export const livePoured = v.looseObject({
  kind: v.literal('livePoured'),
  at: moment,
  tank,
  night: day,
  animals: list(oneOf(['copepods', 'rotifers', 'others'])),
  pours: list(v.looseObject({ into: oneOf(['display', 'sump', 'refugium']), bottles: measure(1_000) })),
  why: maybe(text),
})

/** Of a form or a mark of the key: a newer version may know more of them. */
const name = v.pipe(v.string(), v.regex(/^[A-Za-z]\w{0,99}$/))

const frame = measure(1_000_000)
const looked = v.variant('how', [
  v.looseObject({
    how: v.literal('torch'),
    seconds: measure(86_400),
    frame,
    minutesDark: maybe(whole(-1_440, 1_440)),
  }),
  v.looseObject({ how: v.literal('pane'), frame }),
  v.looseObject({
    how: v.literal('jar'),
    litres: measure(10_000),
    rinsedInto: measure(100_000),
    lookedAt: measure(100_000),
    sieve: maybe(measure(10_000)),
    kept: maybe(measure(1)),
  }),
])
export const smallLifeCounted = v.looseObject({
  kind: v.literal('smallLifeCounted'),
  at: moment,
  tank,
  night: day,
  looked,
  counts: list(count),
  where: maybe(text),
  words: maybe(text),
})
export const kindSeen = v.looseObject({
  kind: v.literal('kindSeen'),
  at: moment,
  tank,
  form: maybe(name),
  marks: list(name),
  says: oneOf(['harmless', 'watch', 'trap', 'unsure']),
  where: maybe(text),
  words: maybe(text),
})

export const photoKept = v.looseObject({
  kind: v.literal('photoKept'),
  at: moment,
  photo: v.custom<PhotoId>((value) => typeof value === 'string' && /^[0-9a-f]{32}$/.test(value)),
  of: v.union([
    v.looseObject({ tank }),
    v.looseObject({ parcel: id<ParcelId>() }),
    v.looseObject({ run: id<RunId>() }),
    v.looseObject({ entry: stamp }),
  ]),
  type: oneOf(['image/jpeg', 'image/png', 'image/webp']),
  bytes: whole(1, 100_000_000),
  words: maybe(text),
})
