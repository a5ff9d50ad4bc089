/**
 * The walk is what happens to someone who lives through it, dose by dose: from any evening of a life in which nights were
 * missed or skipped, portions dropped, bags counted anew and plans put on hold. No published value: the law is that the two
 * agree, night for night, tank for tank, bag for bag.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { comesFrom, dayFromNumber, sourcesOf, walk } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { anyHousehold, nightAfter } from '../../support/givenHousehold.ts'
import { greenFood, lineOf } from '../../support/givenLab.ts'
import { anyBump, bedtime, liveOn, liveUntil, plansOf } from '../../support/livingThrough.ts'

test('from any evening on, the walk is what happens to someone who lives through it, dose by dose', () => {
  const cases = tally(
    'nights missed before',
    'nights skipped before',
    'portions dropped before',
    'a bag counted before',
    'a bottle spilt from before',
    'put on hold before',
    'still on hold',
    'several tanks',
    'fixed nights',
    'lots and bottles',
    'a tank bare before another',
    'three bags or bottles used in turn',
    'food past its day on the way',
    'two tanks of one night from two bags',
  )
  const law = fc.property(
    anyHousehold,
    fc.array(anyBump, { maxLength: 8 }),
    fc.integer({ min: 0, max: 15 }),
    (household, bumps, from) => {
      const plans = plansOf(household)
      const { book, met } = liveUntil(household, bumps, from)
      const evening = bedtime(nightAfter(from))
      const world = book.world()
      const walked = walk(world, greenFood, evening)
      if (plans.length === 0) {
        expect(walked).toBeUndefined()
        return
      }
      if (!walked) throw new Error('a plan feeds it, and nothing was walked')
      const { given, bare } = liveOn(book, plans, from)
      const steps = walked.steps.map(({ on, plan, from: source, taken, amount }) => ({
        ...{ night: dayFromNumber(on), plan: plan.plan, from: comesFrom(source.source), taken, amount },
      }))
      expect(steps).toEqual(given)
      expect(walked.bare.map(({ on, plan }) => [plan.plan, dayFromNumber(on)]).sort()).toEqual([...bare].sort())
      const left = new Map(sourcesOf(book.world(), greenFood, evening).map((source) => [comesFrom(source), source]))
      for (const { source, doses, last } of walked.sources) {
        const own = steps.filter((step) => step.from === comesFrom(source))
        expect(doses).toBe(own.length)
        expect(last && dayFromNumber(last)).toBe(own.at(-1)?.night)
        expect(source.left).toBe(left.get(comesFrom(source))?.left ?? 0)
      }

      const fed = given.length > 0
      const kept = household.plans.filter(({ retired }) => !retired)
      cases.note('nights missed before', fed && met.missed > 0)
      cases.note('nights skipped before', fed && met.skipped > 0)
      cases.note('portions dropped before', fed && met.dropped > 0)
      cases.note('a bag counted before', fed && met.counted > 0)
      cases.note('a bottle spilt from before', fed && met.spilt > 0)
      cases.note('put on hold before', fed && met.held > 0)
      const states = plans.map((plan) => lineOf(world, evening, plan).state.is)
      cases.note('still on hold', fed && states.includes('held'))
      cases.note('several tanks', fed && kept.length > 1)
      cases.note('fixed nights', fed && kept.some(({ fixed }) => fixed))
      cases.note('lots and bottles', fed && world.lots.size > 0 && world.bottles.size > 0)
      cases.note('a tank bare before another', fed && new Set(bare.values()).size > 1)
      cases.note('three bags or bottles used in turn', walked.sources.filter(({ doses }) => doses > 0).length > 2)
      cases.note(
        'food past its day on the way',
        walked.sources.some(({ source, doses }) => source.left > 1000 && doses > 0 && source.lastGood !== undefined),
      )
      cases.note(
        'two tanks of one night from two bags',
        steps.some((step, at) => steps[at + 1]?.night === step.night && steps[at + 1]?.from !== step.from),
      )
    },
  )
  holds(law, 200)
  cases.expectAtLeast(5)
}, 180_000)
