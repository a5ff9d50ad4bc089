/** However a parcel is shared out, nobody gains or loses a penny. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { splitBy } from '../../../core/index.ts'

test('shares by weight sum to exactly what was paid, and each is within a penny of its due', () => {
  let uneven = 0
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 1_000_000_000 }),
      fc.array(fc.nat(100_000), { minLength: 1, maxLength: 12 }),
      (minor, weights) => {
        const all = weights.reduce((sum, weight) => sum + weight, 0)
        const shares = splitBy({ minor, currency: 'GBP' }, weights)
        if (all === 0) {
          // What `expect` hands back would be taken for the property's own answer.
          expect(shares).toBeUndefined()
          return
        }
        const minors = shares?.map((share) => (share === 'free' ? 0 : share.minor)) ?? []
        expect(minors.reduce((sum, share) => sum + share, 0)).toBe(minor)
        minors.forEach((share, place) => {
          const due = (minor * (weights[place] ?? 0)) / all
          uneven += Number(due % 1 !== 0)
          expect(Math.abs(share - due)).toBeLessThan(1.001)
        })
      },
    ),
    { examples: [[1, [0]]] },
  )
  expect(uneven).toBeGreaterThan(50)
})
