/** What a step of the pumps-off night is called, by its key. */
import { capital } from './numbers.ts'

const names: Readonly<Record<string, string>> = {}

/** A step a newer version knows goes by its own key. */
export const stepName = (step: string): string => capital(names[step] ?? step.replace(/-/g, ' '))
