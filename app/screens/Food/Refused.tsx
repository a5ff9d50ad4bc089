/** A refusal that concerns no single field, with whatever would settle it. */
import type { ReactNode } from 'react'
import { Notice } from '../../parts/Notice.tsx'
import type { Act } from './useAct.ts'

type RefusedProps = { readonly act: Act; readonly at?: string; readonly children?: ReactNode }

export const Refused = ({ act, at = '', children }: RefusedProps) => {
  const says = act.wrong(at)
  if (!says) return null
  return (
    <Notice kind="refusal">
      <p>{says}</p>
      {children}
    </Notice>
  )
}
