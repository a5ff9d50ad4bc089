/** The truth about reminders in one sentence, and the way to the rest. */
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { useMatter } from '../../state/device.ts'
import { nudgeStanding } from '../../state/nudging.ts'
import { closedSentence } from '../../words/channels.ts'
import type { Reading } from '../../words/reading.ts'
import { useProbes } from '../Reminders/useProbes.ts'

export const RemindersDoor = ({ reading }: { readonly reading: Reading }) => {
  const { probes } = useProbes()
  const standing = nudgeStanding(useMatter('nudge'))
  const calendar = useMatter('calendar')
  return (
    <>
      <p role="status">{probes && closedSentence({ standing, probes, calendar }, reading)}</p>
      <Actions>
        <ButtonLink kind="quiet" href="#/phone/reminders">
          Nudges, calendar, alarm
        </ButtonLink>
      </Actions>
    </>
  )
}
