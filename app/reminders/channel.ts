/** The ways a nudge can travel. One for now; another is another entry in the array that is handed to `reconcile`. */
import type { Day, DoseAsked, RunId, TankId } from '../../core/index.ts'

/** What stands behind "Dosed": what the words said to take, whatever the book would propose by then. */
export type Offer = {
  readonly kind: 'offer'
  readonly night: Day
  readonly tanks: readonly TankId[]
  readonly doses: readonly Pick<DoseAsked, 'plan' | 'taken' | 'amount'>[]
}

export type Telling = {
  /** A later telling of the same name takes the place of an earlier one. */
  readonly key: string
  readonly title: string
  readonly body: string
  /** Absent: nothing can be answered. */
  readonly offer?: Offer
  /** Whose tanks a touch beside the buttons opens, first of all the first. */
  readonly tanks?: readonly TankId[]
  /** It stays until it is touched, and sounds again each time. */
  readonly loud?: true
  /** The page a touch opens, in place of a tank's. */
  readonly opens?: string
  /** She is looking at the phone already. */
  readonly quiet?: true
}

/** What a run's notifications are called, so that the later one takes the place of the one before, and is found again. */
export const runTags = {
  pumps: (run: RunId): string => `pumps/${run}`,
  morning: (run: RunId): string => `morning/${run}`,
} as const
export const isRunTag = (tag: string): boolean => /^(pumps|morning)\//.test(tag)

export type Channel = {
  readonly name: string
  /** Allowed and possible at this moment. */
  readonly open: () => boolean
  readonly show: (telling: Telling) => Promise<void>
}

/** What her wish and the browser's leave come to. 'lost': allowed once, and not any more. */
export type NudgeStanding = 'unsupported' | 'denied' | 'lost' | 'off' | 'on'
