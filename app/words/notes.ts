import type { Day } from '../../core/index.ts'
import { dayHeading } from './diary.ts'

/** Long words cut short where only a line of them has room: at a space if there is one near, never within a letter. */
const cut = (text: string, most: number): string | undefined => {
  const letters = [...text.slice(0, most * 2)]
  if (letters.length <= most && text.length <= most * 2) return undefined
  const begun = letters.slice(0, most).join('')
  const space = begun.search(/\s\S{0,24}$/)
  return `${(space > 0 ? begun.slice(0, space) : begun).trimEnd()} …`
}

/** One line of it, wherever it is spoken of. */
export const inShort = (text: string): string => {
  const line = text.replace(/[^\S\u00a0]+/g, ' ')
  return cut(line, 240) ?? line
}

const mostLines = 8
/** As much of a note as stands in the book; undefined where it is not too long to stand there whole. */
export const folded = (text: string): string | undefined => {
  const lines = text.split('\n')
  return lines.length > mostLines
    ? (cut(lines.slice(0, mostLines).join('\n'), 400) ?? `${lines.slice(0, mostLines).join('\n')} …`)
    : cut(text, 400)
}

/** Once it is on disk: "Your note stands under Thursday, 12 November." */
export const notedWords = (day: Day, today: Day): string =>
  `Your note stands under ${day === today ? 'today' : dayHeading(day, today)}.`
