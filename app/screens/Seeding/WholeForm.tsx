/** What is wrong with a form as a whole. */
import type { ReactNode } from 'react'
import { Notice } from '../../parts/Notice.tsx'
import type { Seeding } from './useSeeding.ts'

export const WholeForm = ({ act, children }: { readonly act: Seeding; readonly children?: ReactNode }) => {
  const says = act.wrong('')
  if (!says) return null
  return (
    <Notice kind="refusal">
      <p>{says}</p>
      {children}
    </Notice>
  )
}
