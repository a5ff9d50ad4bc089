/** What she was shown last time, so that a date that moved can be told from one that stood still. It is this phone's own. */
import { useEffect, useRef, useState } from 'react'
import { type Day, type FoodId, type LastsShown, seenOf, type World } from '../../../../core/index.ts'
import { deviceRead, matter, setMatter } from '../../../state/device.ts'

/**
 * The date before the one that is shown now; undefined where none was. It stands for the whole visit, and on later ones
 * until another date is shown.
 * @param bareNight undefined while there is no date to show
 */
export const useShown = (food: FoodId, bareNight: Day | undefined, world: World): LastsShown | undefined => {
  const [before, setBefore] = useState<LastsShown>()
  const visit = useRef<LastsShown>(undefined)
  useEffect(() => {
    if (bareNight === undefined) return
    // Kept even if she has left by then: what was on the glass was shown.
    void deviceRead.then(() => {
      const all = matter('lastsShown')
      const kept = all?.[food]
      visit.current ??= kept?.now.bareNight === bareNight ? kept.before : kept?.now
      setBefore(visit.current)
      const now = { bareNight, seen: seenOf(world) }
      if (kept && JSON.stringify(kept.now) === JSON.stringify(now)) return
      // A disk that cannot keep it tells the reasons once more next time.
      void setMatter('lastsShown', { ...all, [food]: { now, ...(visit.current && { before: visit.current }) } })
    })
  }, [food, bareNight, world])
  return before
}
