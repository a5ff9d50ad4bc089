/**
 * How long the food lasts is what happens to someone who lives through it: each night she opens the app, gives what it
 * proposes first, and so on until no tank can be fed. No published value: the law is that the two agree.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type Day, lasts, momentAt, type PlanId, sourcesOf } from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { done, london } from '../../support/given.ts'
import { anyHousehold, type Household, livedIn, nightAfter } from '../../support/givenHousehold.ts'
import { dose, greenFood, lineOf } from '../../support/givenLab.ts'

/** Ten to midnight: in the night of the day it is, whatever the lamp. */
const bedtime = (night: Day) => momentAt(night, 1430, london)
const plansOf = ({ plans }: Household): PlanId[] => plans.map(({ id }) => `plan${id}` as PlanId)

const liveThrough = (household: Household) => {
  const book = livedIn(household)
  const bare = new Map<PlanId, Day>()
  const fed: Day[] = []
  let openedOnTheWay = false
  for (let nights = 0; bare.size < household.plans.length; nights += 1) {
    if (nights > 400) throw new Error('the food never ends')
    const night = nightAfter(nights)
    for (const plan of plansOf(household)) {
      const world = book.world()
      const { state, servings, night: theirs } = lineOf(world, bedtime(night), plan)
      if (theirs !== night) throw new Error(`${theirs} is not tonight`)
      if (state.is !== 'due') continue
      if (servings.length === 0) {
        if (!bare.has(plan)) bare.set(plan, night)
        continue
      }
      // What is proposed is never refused and never asked about.
      const facts = done(dose(bedtime(night), { plan })(world))
      openedOnTheWay ||= facts.some(({ kind }) => kind === 'bottleOpened')
      book.note(...facts)
      fed.push(night)
    }
  }
  const bareNight = [...bare.values()].sort()[0]
  const end = bedtime(nightAfter(401))
  return { book, fed, bare, bareNight, openedOnTheWay, left: sourcesOf(book.world(), greenFood, end) }
}
const amounts = (sources: ReturnType<typeof sourcesOf>) =>
  sources.map((source) => [source.from === 'bottle' ? source.bottle : source.lot, source.left, source.lastGood]).sort()

test('the forecast is what happens to someone who lives through it', () => {
  const cases = tally(
    'several tanks',
    'tanks with different nights',
    'lots and bottles',
    'time ran out',
    'food ran out',
    'a bottle too low for a dose',
    'a bottle opened on the way',
    'one tank bare while another is fed',
    'bare on the first night',
  )
  const law = fc.property(anyHousehold, (household) => {
    const forecast = lasts(livedIn(household).world(), greenFood, bedtime(nightAfter(0)))
    const lived = liveThrough(household)
    const { bareNight = nightAfter(0), left, fed, bare } = lived
    expect(forecast?.doses).toBe(fed.length)
    expect(forecast?.bareNight).toBe(bareNight)
    expect(forecast?.lastNight).toBe(fed.findLast((night) => night < bareNight))
    expect(amounts(forecast?.wasted ?? [])).toEqual(amounts(left))

    const least = Math.min(...household.plans.map(({ amount }) => amount))
    cases.note('several tanks', household.plans.length > 1)
    cases.note('tanks with different nights', new Set(household.plans.map(({ every }) => every)).size > 1)
    cases.note('lots and bottles', household.lots.length > 0 && household.bottles.length > 0)
    cases.note('time ran out', forecast?.ends === 'time')
    cases.note('food ran out', forecast?.ends === 'food' && fed.length > 0)
    cases.note(
      'a bottle too low for a dose',
      left.some(({ from, left, lastGood }) => from === 'bottle' && left < least && (lastGood ?? '9') >= bareNight),
    )
    cases.note('a bottle opened on the way', lived.openedOnTheWay)
    cases.note('one tank bare while another is fed', new Set(bare.values()).size > 1 && fed.some((n) => n > bareNight))
    cases.note('bare on the first night', fed.length === 0)
  })
  holds(law, 250)
  cases.expectAtLeast(10)
}, 60_000)
