/** The coming nights for her own calendar: made before it is asked for, for a phone forgets a touch within seconds. */
import { useEffect, useState } from 'react'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import type { Calendar } from '../../reminders/calendarFile.ts'
import { makeCalendar, takeCalendar, tryCalendar } from '../../state/calendar.ts'
import { useMatter } from '../../state/device.ts'
import type { HandedOver } from '../../state/handOver.ts'
import type { NotHandedOver } from '../../storage/backupRefusals.ts'
import type { StorageRefusal } from '../../storage/connection.ts'
import { calendarReach, calendarTakenWords, nothingAhead, oldSeriesWords, trialTaken } from '../../words/calendar.ts'
import { refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'

type Taken =
  | { readonly is: 'done'; readonly calendar: Calendar; readonly handed: HandedOver }
  | { readonly is: 'refused'; readonly refusal: NotHandedOver | StorageRefusal }

export const CalendarFile = ({ reading }: { readonly reading: Reading }) => {
  const { world } = reading
  const before = useMatter('calendar')
  const wishes = useMatter('wishes')
  const [ready, setReady] = useState<Calendar | null>()
  const [taken, setTaken] = useState<Taken>()
  const [tried, setTried] = useState(false)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the matters are read where it is made; a change of theirs makes it anew
  useEffect(() => {
    let left = false
    void makeCalendar(world).then((calendar) => {
      if (!left) setReady(calendar ?? null)
    })
    return () => {
      left = true
    }
  }, [world, before, wishes])
  const take = async () => {
    if (!ready) return
    const handed = await takeCalendar(ready)
    setTaken(
      handed.ok ? { is: 'done', calendar: ready, handed: handed.value } : { is: 'refused', refusal: handed.refusal },
    )
  }
  return (
    <>
      <p>{calendarReach(before, reading)}</p>
      {ready === null ? (
        <p>{nothingAhead}</p>
      ) : (
        <Actions>
          <Button kind="quiet" onAct={take} waiting={ready === undefined}>
            {before ? 'Take a new calendar file' : 'Take a calendar file'}
          </Button>
          <output>
            {taken?.is === 'done' &&
              calendarTakenWords(
                { taken: taken.calendar.taken, cancelled: taken.calendar.cancelled.length },
                taken.handed.how,
                reading,
              )}
          </output>
        </Actions>
      )}
      {taken?.is === 'refused' && <Notice kind="refusal">{refusalText(taken.refusal, reading)}</Notice>}
      <Actions>
        <Button kind="quiet" onAct={async () => setTried((await tryCalendar()) !== undefined)}>
          Try it: an event in two minutes
        </Button>
        <output>{tried && trialTaken}</output>
      </Actions>
      {before && <p>{oldSeriesWords}</p>}
    </>
  )
}
