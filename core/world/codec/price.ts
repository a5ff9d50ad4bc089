/** The shape of a price. */
import * as v from 'valibot'
import { whole } from './fields.ts'

const currency = v.pipe(v.string(), v.regex(/^[A-Z]{3}$/))
export const price = v.union([v.literal('free'), v.looseObject({ minor: whole(0, 1_000_000_000), currency })])
