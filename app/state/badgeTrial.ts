/** A number on the icon to look at, then the true one again. */
import { wishesOf } from '../reminders/asked.ts'
import { markIcon } from '../reminders/badge.ts'
import { now } from './clock.ts'
import { matter } from './device.ts'
import { phoneZone } from './phoneZone.ts'
import { currentWorld } from './store.ts'

const shownFor = 10_000

export const tryBadge = async (): Promise<void> => {
  await navigator.setAppBadge(1).catch(() => {})
  setTimeout(() => void markIcon(currentWorld(), now(), wishesOf(matter('wishes'), phoneZone())), shownFor)
}
