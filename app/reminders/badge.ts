/** The number on the app's icon, where there is one: tanks that wait for tonight's dose. It says nothing that could be missed. */
import { type Moment, tanksDue, type Wishes, type World } from '../../core/index.ts'

export const badges = (): boolean => 'setAppBadge' in navigator

/** An icon that cannot be marked, or may not, is no fault. */
export const markIcon = async (world: World, now: Moment, wishes: Wishes): Promise<void> => {
  if (badges()) await navigator.setAppBadge(tanksDue(world, now, wishes).length).catch(() => {})
}
export const clearIcon = async (): Promise<void> => {
  if (badges()) await navigator.clearAppBadge().catch(() => {})
}
