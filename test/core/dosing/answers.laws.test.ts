/** An answer about nights gone by answers them all, in one entry a food, and a dose put right keeps the stock. Laws of our own. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type Day,
  type Fact,
  keptGoing,
  type Moment,
  momentAt,
  moveDose,
  nightsByCount,
  type PlanId,
  type Result,
  type Stamp,
  stoppedFeeding,
  tonight,
  type World,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { done, london } from '../../support/given.ts'
import { anyHousehold, livedIn, nightAfter } from '../../support/givenHousehold.ts'
import { cockle, dose, tankOf, usGal } from '../../support/givenLab.ts'

const bedtime = (night: Day) => momentAt(night, 1430, london)
const roundsOf = (world: World, now: Moment) =>
  tonight(world, now).flatMap(({ plan, unlogged }) =>
    unlogged.length > 0 ? [{ plan: plan.plan, nights: unlogged }] : [],
  )
const asked = (world: World, now: Moment) =>
  new Map(tonight(world, now).map(({ plan, unlogged }): [PlanId, readonly Day[]] => [plan.plan, unlogged]))

type Answer = 'keptGoing' | 'stopped' | 'counted'
const answered = (
  answer: Answer,
  world: World,
  now: Moment,
  rounds: ReturnType<typeof roundsOf>,
): Result<readonly Fact[], unknown> => {
  if (answer === 'keptGoing') return keptGoing(world, rounds, now)
  if (answer === 'stopped') return stoppedFeeding(world, rounds, now)
  const [first] = rounds
  const food = tonight(world, now).find(({ plan }) => plan.plan === first?.plan)?.plan.food
  const ofIt = rounds.filter(({ plan }) => world.plans.get(plan)?.[0]?.food === food)
  const lots = [...world.lots.values()].filter(({ made, left }) => made.food === food && left >= 0)
  return nightsByCount(
    world,
    { rounds: ofIt, lots: lots.map(({ id, left }) => ({ lot: id, counted: Math.floor(left / 2) })) },
    now,
  )
}

test('after any answer none of the answered nights is asked again, and the answer is one entry a food', () => {
  const cases = tally('keptGoing', 'stopped', 'counted', 'several tanks', 'fixed nights', 'two foods')
  const law = fc.property(
    anyHousehold,
    fc.integer({ min: 2, max: 30 }),
    fc.constantFrom<Answer>('keptGoing', 'stopped', 'counted'),
    fc.integer({ min: 0, max: 9 }),
    (household, away, answer, more) => {
      const book = livedIn({ ...household, plans: household.plans.map((plan) => ({ ...plan, retired: false })) })
      const now = bedtime(nightAfter(away))
      const rounds = roundsOf(book.world(), now)
      if (rounds.length === 0) return
      const facts = done(answered(answer, book.world(), now, rounds))
      const foods = new Set(rounds.map(({ plan }) => book.world().plans.get(plan)?.[0]?.food))
      if (answer === 'keptGoing') expect(facts).toHaveLength(foods.size)
      // A night that is known and lies between parts what is said of one plan.
      if (answer === 'stopped') expect(facts.length).toBeGreaterThanOrEqual(rounds.length)
      if (answer === 'counted') expect(facts).toHaveLength(1)
      const told = new Set(
        facts.flatMap((fact) =>
          fact.kind === 'doseGiven'
            ? fact.served.map(({ plan }) => plan)
            : fact.kind === 'nightsMissed'
              ? [fact.plan]
              : fact.kind === 'nightsCounted'
                ? fact.rounds.map(({ plan }) => plan)
                : [],
        ),
      )
      book.note(...facts)
      const later = bedtime(nightAfter(away + more))
      for (const { plan, nights } of rounds.filter((round) => told.has(round.plan)))
        for (const world of [asked(book.world(), now), asked(book.world(), later)])
          expect(world.get(plan)?.filter((night) => nights.includes(night)) ?? []).toEqual([])
      expect(
        answered(
          'keptGoing',
          book.world(),
          now,
          rounds.filter(({ plan }) => told.has(plan)),
        ).ok,
      ).toBe(false)
      cases.note(answer)
      cases.note('several tanks', rounds.length > 1)
      cases.note(
        'fixed nights',
        household.plans.some(({ fixed }) => fixed),
      )
      cases.note('two foods', foods.size > 1)
    },
  )
  holds(law, 250)
  cases.expectAtLeast(15)
}, 60_000)

test('no answer gives a dose outside the nights asked about', () => {
  const law = fc.property(anyHousehold, fc.integer({ min: 2, max: 30 }), (household, away) => {
    const book = livedIn(household)
    const now = bedtime(nightAfter(away))
    const rounds = roundsOf(book.world(), now)
    if (rounds.length === 0) return
    const nights = new Map(rounds.map((round): [PlanId, readonly Day[]] => [round.plan, round.nights]))
    const served = done(keptGoing(book.world(), rounds, now)).flatMap((fact) => fact.served)
    expect(served).toHaveLength(rounds.reduce((sum, round) => sum + round.nights.length, 0))
    for (const { plan, night } of served) expect(nights.get(plan)).toContain(night)
  })
  holds(law, 150)
}, 60_000)

test('a dose that went into another tank changes neither lot nor bottle', () => {
  const cases = tally('moved')
  const law = fc.property(anyHousehold, (household) => {
    const book = livedIn(household)
    book.note(...tankOf(cockle, usGal(120)))
    const now = bedtime(nightAfter(0))
    const line = tonight(book.world(), now).find(({ state, servings }) => state.is === 'due' && servings.length > 0)
    if (!line) return
    const stamps: readonly Stamp[] = book.does(dose(now, { plan: line.plan.plan }))
    const stock = ({ lots, bottles }: World) => JSON.stringify([[...lots.values()], [...bottles.values()]])
    const before = stock(book.world())
    const entry = stamps.at(-1)
    if (!entry) throw new Error('nothing was written')
    book.does((world) => moveDose(world, { entry, from: line.tank.tank, to: cockle, sure: true, why: 'rich' }, now))
    expect(stock(book.world())).toBe(before)
    cases.note('moved')
  })
  holds(law, 150)
  cases.expectAtLeast(20)
}, 60_000)
