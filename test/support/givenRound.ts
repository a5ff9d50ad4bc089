/** The lab with one round to keep: green portions for Long Gallery, a millilitre every other night. */
import type { Day, Fact } from '../../core/index.ts'
import { at, type Book, given } from './given.ts'
import { lab, lineOf, onHand, planOf } from './givenLab.ts'

export const withPortions = (first: string, portions = 40, ...more: readonly (readonly Fact[])[]): Book =>
  given(lab, ...more, planOf({ first, amount: 1 }), onHand({ portions, each: 1, frozen: '2027-01-05' }))

/** When Long Gallery is fed next, as the evening's line says. */
export const nextOf = (book: Book, now: string): Day | 'due' => {
  const { state } = lineOf(book.world(), at(now))
  return state.is === 'due' ? 'due' : state.next
}
