/** At the top of a form that still holds what was typed on an earlier day: said once, and let go with one touch. */
import './unfinished.css'
import type { Day, Moment, Zone } from '../../core/index.ts'
import { LinkButton } from '../parts/Actions.tsx'
import { unfinishedWords } from '../words/drafts.ts'

type UnfinishedProps = {
  /** When what was restored had been typed; undefined where nothing was. */
  readonly since: Moment | undefined
  readonly zone: Zone
  readonly today: Day
  readonly onFresh: () => void
}

export const Unfinished = ({ since, zone, today, onFresh }: UnfinishedProps) => {
  const says = since === undefined ? undefined : unfinishedWords(since, zone, today)
  if (says === undefined) return null
  return (
    <p className="unfinished">
      <span>{says}</span>
      <LinkButton onAct={onFresh}>Start afresh</LinkButton>
    </p>
  )
}
