/** The forms of the key by name, apart from the key itself: the diary names what it once came to. */
import { capital } from './numbers.ts'

const forms: Readonly<Record<string, string>> = {}

/** A form a newer version knows goes by its own name. */
export const formName = (form: string): string => capital(forms[form] ?? form)
