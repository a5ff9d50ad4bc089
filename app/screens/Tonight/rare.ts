/** What few evenings need, in one part of its own: Tonight opens sooner without it. */
import { lazy } from 'react'
import { loadPart } from '../../state/leave.ts'

const seldom = () => loadPart(() => import('./seldom/seldom.ts'))

export const Lamps = lazy(async () => ({ default: (await seldom()).Lamps }))
export const Unlogged = lazy(async () => ({ default: (await seldom()).Unlogged }))
export const Overfed = lazy(async () => ({ default: (await seldom()).Overfed }))
export const Holding = lazy(async () => ({ default: (await seldom()).Holding }))
export const Otherwise = lazy(async () => ({ default: (await seldom()).Otherwise }))
export const PastFood = lazy(async () => ({ default: (await seldom()).PastFood }))
export const Refused = lazy(async () => ({ default: (await seldom()).Refused }))
