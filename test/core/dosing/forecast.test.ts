/**
 * How long the food lasts is what happens to someone who lives through it: each night she opens the app, gives what it
 * proposes first, and so on until no tank can be fed. No published value: the law is that the two agree.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Day,
  lasts,
  type Moment,
  momentAt,
  type PlanId,
  sourcesOf,
  tonight,
  type World,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { type Book, done, london } from '../../support/given.ts'
import { amberPlan, anyHousehold, type Household, livedIn, nightAfter } from '../../support/givenHousehold.ts'
import { dose, greenFood, lineOf } from '../../support/givenLab.ts'

/** Ten to midnight: in the night of the day it is, whatever the lamp. */
const bedtime = (night: Day) => momentAt(night, 1430, london)
/** Those of tanks that are still kept. */
const plansOf = ({ plans }: Household): PlanId[] =>
  plans.flatMap(({ id, retired }) => (retired ? [] : [`plan${id}` as PlanId]))

/** The other food is fed beside it, and has nothing to do with it. */
const feedAmber = (book: Book, world: World, now: Moment): World => {
  const line = tonight(world, now).find(({ plan }) => plan.plan === amberPlan)
  if (line?.state.is !== 'due' || line.servings.length === 0) return world
  book.does(dose(now, { plan: amberPlan }))
  return book.world()
}

const liveThrough = (household: Household) => {
  const book = livedIn(household)
  // Folded again only when something was written: most nights nothing is.
  let world = book.world()
  const bare = new Map<PlanId, Day>()
  const fed: Day[] = []
  let openedOnTheWay = false
  for (let nights = 0; bare.size < plansOf(household).length; nights += 1) {
    if (nights > 400) throw new Error('the food never ends')
    const night = nightAfter(nights)
    world = feedAmber(book, world, bedtime(night))
    for (const plan of plansOf(household)) {
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
      world = book.world()
      fed.push(night)
    }
  }
  const bareNight = [...bare.values()].sort()[0]
  const end = bedtime(nightAfter(401))
  return { book, fed, bare, bareNight, openedOnTheWay, left: sourcesOf(world, greenFood, end) }
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
    'fixed nights',
    'on hold',
    'a night that was too much',
    'a tank taken down',
    'another food beside it',
    'fixed nights on hold after too much',
  )
  const law = fc.property(anyHousehold, (household) => {
    const forecast = lasts(livedIn(household).world(), greenFood, bedtime(nightAfter(0)))
    if (plansOf(household).length === 0) {
      expect(forecast).toBeUndefined()
      return
    }
    const lived = liveThrough(household)
    const { bareNight = nightAfter(0), left, fed, bare } = lived
    expect(forecast?.doses).toBe(fed.length)
    expect(forecast?.bareNight).toBe(bareNight)
    expect(forecast?.lastNight).toBe(fed.findLast((night) => night < bareNight))
    expect(amounts(forecast?.wasted ?? [])).toEqual(amounts(left))

    const plans = household.plans.filter(({ retired }) => !retired)
    const least = Math.min(...plans.map(({ amount }) => amount))
    cases.note('several tanks', plans.length > 1)
    cases.note('tanks with different nights', new Set(plans.map(({ every }) => every)).size > 1)
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
    const some = (what: (plan: (typeof plans)[number]) => boolean) => fed.length > 0 && plans.some(what)
    cases.note(
      'fixed nights',
      some(({ fixed }) => fixed),
    )
    cases.note(
      'on hold',
      some(({ hold }) => hold !== undefined && hold > nightAfter(0)),
    )
    cases.note(
      'a night that was too much',
      some(({ overfed }) => overfed !== undefined),
    )
    cases.note('a tank taken down', fed.length > 0 && plans.length < household.plans.length)
    cases.note('another food beside it', household.amber && fed.length > 0)
    cases.note(
      'fixed nights on hold after too much',
      some(({ fixed, hold, overfed }) => fixed && hold !== undefined && overfed !== undefined),
    )
  })
  holds(law, 220)
  cases.expectAtLeast(3)
}, 120_000)
