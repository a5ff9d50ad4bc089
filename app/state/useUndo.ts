/** Ten seconds in which the last act can be taken back where it was done. Afterwards the diary does the same. */
import { useEffect, useState } from 'react'
import type { Moment } from '../../core/index.ts'
import { now } from './clock.ts'

export const undoSeconds = 10

export type Undoing = {
  readonly until: Moment | null
  readonly now: Moment
  readonly begin: () => void
  readonly end: () => void
}

export const useUndo = (): Undoing => {
  const [offer, setOffer] = useState<{ readonly until: Moment }>()
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
    until: offer?.until ?? null,
    now: shown,
    begin: () => {
      const at = now()
      setShown(at)
      setOffer({ until: (at + undoSeconds * 1000) as Moment })
    },
    end: () => setOffer(undefined),
  }
}
