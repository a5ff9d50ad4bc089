/** What is asked before live bottles are bought; kept as a draft, for it is about today and not a thing on record. */
import { type ReadyAnswers, usualReach } from '../../../core/index.ts'
import { type Gathered, maybe, numberIn } from './reading.ts'

export type BeforeFields = {
  /** US gallons. */
  readonly reach: string
  readonly ammonia: string
  readonly nitrite: string
  readonly copper: 'notSaid' | 'never' | 'once' | 'inTheWater'
  readonly copperTested: 'notSaid' | 'none' | 'notYet'
  readonly film: 'notSaid' | 'yes' | 'no'
  readonly celsius: string
  readonly salinity: string
}
export const beforeFields: BeforeFields = {
  reach: String(usualReach),
  ammonia: '',
  nitrite: '',
  copper: 'notSaid',
  copperTested: 'notSaid',
  film: 'notSaid',
  celsius: '',
  salinity: '',
}

export type BeforeRead = {
  readonly answers: ReadyAnswers
  readonly reach: number | undefined
  /** Fields that cannot be read; each counts as not said. */
  readonly found: Gathered
}

export const readBefore = (fields: BeforeFields): BeforeRead => {
  const found: Gathered = []
  const { copper, copperTested, film } = fields
  const answers: ReadyAnswers = {
    ...maybe('ammonia', numberIn(found, 'ammonia', fields.ammonia)),
    ...maybe('nitrite', numberIn(found, 'nitrite', fields.nitrite)),
    ...maybe('celsius', numberIn(found, 'celsius', fields.celsius)),
    ...maybe('salinity', numberIn(found, 'salinity', fields.salinity)),
    ...(copper === 'notSaid' ? {} : { copper }),
    ...(copperTested === 'notSaid' ? {} : { copperTestedNone: copperTested === 'none' }),
    ...(film === 'notSaid' ? {} : { film: film === 'yes' }),
  }
  return { answers, reach: numberIn(found, 'reach', fields.reach), found }
}
