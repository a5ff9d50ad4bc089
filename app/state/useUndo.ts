/** Ten seconds in which the last act can be taken back where it was done. Afterwards the diary does the same. */
import { useEffect, useState } from 'react'
import type { Entry, Fact, Moment, Stamp } from '../../core/index.ts'
import { now } from './clock.ts'

export const undoSeconds = 10

export type Undoing = {
  readonly targets: readonly Stamp[]
  readonly until: Moment | null
  readonly now: Moment
  readonly begin: (entries: readonly Entry<Fact>[]) => void
  readonly end: () => void
}

export const useUndo = (): Undoing => {
  const [offer, setOffer] = useState<{ readonly targets: readonly Stamp[]; readonly until: Moment }>()
  const [shown, setShown] = useState(now)
  useEffect(() => {
    if (!offer) return
    const timer = setInterval(() => {
      const at = now()
      setShown(at)
      if (at >= offer.until) setOffer(undefined)
    }, 250)
    return () => clearInterval(timer)
  }, [offer])
  return {
    targets: offer?.targets ?? [],
    until: offer?.until ?? null,
    now: shown,
    begin: (entries) => {
      const at = now()
      setShown(at)
      setOffer({ targets: entries.map(({ id }) => id), until: (at + undoSeconds * 1000) as Moment })
    },
    end: () => setOffer(undefined),
  }
}
