/** The screen is kept on while something wants it, where the browser does that. It is lost whenever the app is hidden. */
import { useCallback, useEffect, useState } from 'react'

export type ScreenLock = 'awake' | 'asleep' | 'notHere'

export const useScreenLock = (): { readonly lock: ScreenLock; readonly ask: () => void } => {
  const [lock, setLock] = useState<ScreenLock>('wakeLock' in navigator ? 'asleep' : 'notHere')
  const [asked, setAsked] = useState(0)
  const ask = useCallback(() => setAsked((times) => times + 1), [])
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked again is the effect run again
  useEffect(() => {
    if (!('wakeLock' in navigator)) return
    let held: WakeLockSentinel | undefined
    let left = false
    const take = async () => {
      if (document.visibilityState !== 'visible' || held?.released === false) return
      try {
        const sentinel = await navigator.wakeLock.request('screen')
        if (left) return void sentinel.release()
        held = sentinel
        setLock('awake')
        sentinel.addEventListener('release', () => !left && setLock('asleep'))
      } catch {
        // A low battery, or a browser that wants a touch first.
        setLock('asleep')
      }
    }
    void take()
    document.addEventListener('visibilitychange', take)
    return () => {
      left = true
      document.removeEventListener('visibilitychange', take)
      void held?.release()
    }
  }, [asked])
  return { lock, ask }
}
