/** The guided minute: how much of it is left, a tick in the hand every ten seconds, a buzz at its end. */
import { useEffect, useState } from 'react'
import type { Moment } from '../../../core/index.ts'
import { now } from '../../state/clock.ts'
import { buzz } from '../../state/haptic.ts'
import { torchSeconds } from './lifeFields.ts'

/** One short tick, where the phone has one: eyes are on the pane, not on the clock. */
const tick = (): void => {
  if ('vibrate' in navigator) navigator.vibrate(25)
}
const tickEvery = 10

export const secondsLeft = (began: number, at: Moment): number =>
  Math.min(torchSeconds, Math.max(0, torchSeconds - Math.floor((at - began) / 1000)))

/** By the clock, not by counting down: a locked phone changes nothing. Undefined while no minute was begun. */
export const useMinute = (began: number | undefined): number | undefined => {
  const [shown, setShown] = useState(() => (began === undefined ? undefined : secondsLeft(began, now())))
  useEffect(() => {
    if (began === undefined) {
      setShown(undefined)
      return
    }
    let left = secondsLeft(began, now())
    setShown(left)
    if (left === 0) return
    const timer = setInterval(() => {
      const next = secondsLeft(began, now())
      if (next === left) return
      if (next === 0) {
        buzz()
        clearInterval(timer)
      } else if (next % tickEvery === 0) tick()
      left = next
      setShown(next)
    }, 200)
    return () => clearInterval(timer)
  }, [began])
  return began === undefined ? undefined : (shown ?? secondsLeft(began, now()))
}
