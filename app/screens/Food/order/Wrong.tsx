/** What is wrong with a form as a whole. */
import { Notice } from '../../../parts/Notice.tsx'
import type { OrderAct } from './useOrderAct.ts'

export const Wrong = ({ act }: { readonly act: OrderAct }) => {
  const says = act.wrong('')
  return says ? <Notice kind="refusal">{says}</Notice> : null
}
