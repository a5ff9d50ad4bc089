/** The coming evenings as a calendar file: made ahead of the touch, since a phone forgets a touch within seconds. */
import { eveningsAhead, ok, type Result, refuse, type World } from '../../core/index.ts'
import { wishesOf } from '../reminders/asked.ts'
import type { Calendar } from '../reminders/calendarFile.ts'
import type { NotHandedOver } from '../storage/backupRefusals.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { now } from './clock.ts'
import { matter, setMatter } from './device.ts'
import { type HandedOver, handOver } from './handOver.ts'
import { newId } from './ids.ts'
import { loadPart } from './leave.ts'
import { phoneZone } from './phoneZone.ts'

/** Undefined: no night is ahead that would ring. */
export const makeCalendar = async (world: World): Promise<Calendar | undefined> => {
  const { calendarFile } = await loadPart(() => import('../reminders/calendarFile.ts'))
  const at = now()
  const evenings = eveningsAhead(world, at, wishesOf(matter('wishes'), phoneZone()))
  if (evenings.length === 0) return undefined
  return calendarFile(evenings, matter('calendar'), { now: at, series: newId() })
}

/** Only once it has left is it noted until when it reaches. */
export const takeCalendar = async ({
  text,
  taken,
}: Calendar): Promise<Result<HandedOver, NotHandedOver | StorageRefusal>> => {
  const handed = await handOver(new File([text], 'smallhours-evenings.ics', { type: 'text/calendar;charset=utf-8' }))
  if (!handed) return refuse({ why: 'notHandedOver' })
  const kept = await setMatter('calendar', taken)
  return kept.ok ? ok(handed) : kept
}

/** An event to try the calendar with. */
export const tryCalendar = async (): Promise<HandedOver | undefined> => {
  const { trialFile } = await loadPart(() => import('../reminders/calendarFile.ts'))
  return handOver(new File([trialFile(now())], 'smallhours-trial.ics', { type: 'text/calendar;charset=utf-8' }))
}
