/** Reads a number as a person types it: comma or point, thousands or none. Never guesses between two readings. */
import { ok, type Result, refuse } from './result.ts'

export type NumberRefusal =
  | { readonly why: 'empty' }
  | { readonly why: 'notANumber'; readonly typed: string }
  /** "1.000" is one to some and a thousand to others. */
  | { readonly why: 'twoReadings'; readonly typed: string; readonly readings: readonly [number, number] }

/**
 * Accepts "60", "60.5", "60,5", "1 200", "1,234.5", "1.234,5". Refuses text, and asks which of two numbers is meant where
 * a single mark stands before exactly three digits. Signs are read, so that the caller can name what it refuses.
 */
export const readNumber = (typed: string): Result<number, NumberRefusal> => {
  const text = typed.trim().replace(/(?<=\d)[\s\u00a0\u202f'’](?=\d{3}(?!\d))/g, '')
  if (text === '') return refuse({ why: 'empty' })
  const shape = /^([-−]?)([\d.,]*\d[\d.,]*)$/.exec(text)
  // Three hundred digits would read as infinity.
  if (!shape || text.length > 40) return refuse({ why: 'notANumber', typed })
  const sign = shape[1] ? -1 : 1
  const digits = shape[2] ?? ''
  const marks = digits.replace(/\d/g, '')
  if (marks === '') return ok(sign * Number(digits))
  const decimal = marks.at(-1) ?? '.'
  const whole = digits.slice(0, digits.lastIndexOf(decimal))
  const fraction = digits.slice(digits.lastIndexOf(decimal) + 1)
  if (marks.length === 1) {
    const point = sign * Number(`${whole || '0'}.${fraction || '0'}`)
    const couldBeThousands = /^[1-9]\d{0,2}$/.test(whole) && fraction.length === 3
    return couldBeThousands
      ? refuse({ why: 'twoReadings', typed, readings: [point, sign * Number(whole + fraction)] })
      : ok(point)
  }
  const repeated = [...marks].every((mark) => mark === decimal)
  const groups = repeated ? digits.split(decimal) : whole.split(marks[0] ?? ',')
  const grouped = groups.every((group, i) => (i === 0 ? /^\d{1,3}$/ : /^\d{3}$/).test(group))
  if (!grouped) return refuse({ why: 'notANumber', typed })
  return ok(sign * Number(repeated ? groups.join('') : `${groups.join('')}.${fraction || '0'}`))
}

/** A tolerance that forgives binary fractions (0.6 / 0.05 computes as 11.999…) and nothing a pipette could show. */
const nearly = 1e-9

/** How many `step`s reach `value`, the last one begun counted whole. */
export const stepsToReach = (value: number, step: number): number => {
  const steps = value / step
  return Math.ceil(steps - nearly * Math.max(1, Math.abs(steps)))
}
/** How many whole `step`s fit into `value`. */
export const stepsWithin = (value: number, step: number): number => {
  const steps = value / step
  return Math.floor(steps + nearly * Math.max(1, Math.abs(steps)))
}
