/** The probes, asked again whenever the answer may have changed: on coming back, after a touch, when the leave changes. */
import { useCallback, useEffect, useState } from 'react'
import { type Probes, probe } from '../../state/probes.ts'

export const useProbes = (): { readonly probes: Probes | undefined; readonly again: () => void } => {
  const [probes, setProbes] = useState<Probes>()
  const again = useCallback(() => void probe().then(setProbes), [])
  useEffect(() => {
    again()
    document.addEventListener('visibilitychange', again)
    window.addEventListener('focus', again)
    let left = false
    let permission: PermissionStatus | undefined
    // Some browsers tell when their leave is given or taken back elsewhere; the others are asked on coming back.
    void navigator.permissions
      ?.query({ name: 'notifications' })
      .then((status) => {
        if (left) return
        permission = status
        status.addEventListener('change', again)
      })
      .catch(() => {})
    return () => {
      left = true
      document.removeEventListener('visibilitychange', again)
      window.removeEventListener('focus', again)
      permission?.removeEventListener('change', again)
    }
  }, [again])
  return { probes, again }
}
