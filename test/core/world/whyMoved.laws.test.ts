/** A date moves for reasons: they come to the whole, and where everything went as planned there are none. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { lasts, seenOf, whyMoved } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { anyHousehold, livedIn, nightAfter } from '../../support/givenHousehold.ts'
import { greenFood } from '../../support/givenLab.ts'
import { anyBump, type Bump, bedtime, liveUntil } from '../../support/livingThrough.ts'

type Lived = Parameters<typeof liveUntil>

/** What was shown on the first evening, and what is told after so many nights. */
const lookAgain = (household: Lived[0], bumps: readonly Bump[], nights: number) => {
  const before = livedIn(household).world()
  const then = lasts(before, greenFood, bedtime(nightAfter(0)))
  const { book } = liveUntil(household, bumps, nights)
  const [world, now] = [book.world(), bedtime(nightAfter(nights))]
  const moved = then && whyMoved(world, greenFood, { bareNight: then.bareNight, seen: seenOf(before) }, now)
  return { then, moved, to: lasts(world, greenFood, now)?.bareNight }
}

test('the reasons a date moved come to the whole move', () => {
  const cases = tally('moved', 'for two reasons', 'sooner and later at once', 'for the nights alone')
  const law = fc.property(
    anyHousehold,
    fc.array(anyBump, { minLength: 1, maxLength: 8 }),
    fc.integer({ min: 1, max: 14 }),
    (household, bumps, nights) => {
      const { then, moved, to } = lookAgain(household, bumps, nights)
      if (then) expect(moved?.to ?? then.bareNight).toBe(to)
      if (!moved) return
      expect(moved.parts.reduce((sum, { days }) => sum + days, 0)).toBe(moved.days)
      expect(moved.parts.every(({ days }) => days !== 0)).toBe(true)
      const days = moved.parts.map((part) => part.days)
      cases.note('moved')
      cases.note('for two reasons', days.length > 1)
      cases.note('sooner and later at once', Math.min(...days) < 0 && Math.max(...days) > 0)
      cases.note('for the nights alone', days.length === 1 && moved.parts[0]?.because.about === 'nights')
    },
  )
  holds(law, 150)
  cases.expectAtLeast(3)
}, 120_000)

test('while every dose is given as planned, no date moves', () => {
  const cases = tally('lived through', 'up to the night it was bare')
  const law = fc.property(anyHousehold, fc.integer({ min: 1, max: 20 }), (household, nights) => {
    const { then, moved } = lookAgain(household, [], nights)
    // Once it is bare, the first night without food is every night anew.
    const bare = then !== undefined && nightAfter(nights) > then.bareNight
    if (!bare) expect(moved).toBeUndefined()
    cases.note('lived through', then !== undefined && !bare)
    cases.note('up to the night it was bare', then !== undefined && nightAfter(nights) === then.bareNight)
  })
  holds(law, 150)
  cases.expectAtLeast(3)
}, 120_000)
