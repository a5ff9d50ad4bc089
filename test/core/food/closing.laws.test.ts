/** Whatever was written down, by whom and in which order: the closing sheet of every bottle sums to what was in it. */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  bottleAccounts,
  closing,
  type DeviceId,
  day,
  type Entry,
  type Fact,
  fold,
  microlitres,
  moment,
  nextStamp,
  type Stamp,
  type World,
} from '../../../core/index.ts'
import { anyOf } from '../../fixtures/facts.ts'
import { anyLedger } from '../../support/givenAnything.ts'

const when = { now: moment(Date.UTC(2026, 5, 1)), today: day('2026-06-01') }

const sums = (world: World) =>
  [...bottleAccounts(world).values()].map((account) => {
    const { held, sheet, portions } = closing(world, account, 1000, when)
    const { made, ...ways } = portions
    return {
      held,
      parts: Object.values(sheet).reduce((sum, part) => sum + part, 0),
      made,
      went: Object.values(ways).reduce((sum, count) => sum + count, 0),
      whole: Object.values(sheet).every(Number.isSafeInteger),
    }
  })

/** Portions of one size, so that bags can be joined; and mostly what moves, joins and counts them. */
const sized: fc.Arbitrary<Fact> = fc
  .oneof(anyOf.portionsFrozen, anyOf.portionsFrozen, anyOf.portionsOnHand)
  .map((fact) => ({ ...fact, each: microlitres(500) }))
const anyBusy: fc.Arbitrary<Fact> = fc.oneof(
  sized,
  sized,
  anyOf.portionsMoved,
  anyOf.portionsMoved,
  anyOf.lotsJoined,
  anyOf.lotsJoined,
  anyOf.portionsCounted,
  anyOf.nightsCounted,
  anyOf.doseGiven,
  anyOf.doseGivenOffPlan,
  anyOf.portionsGone,
  anyOf.portionsGivenAway,
  anyOf.portionsFound,
  anyOf.liquidMeasured,
  anyOf.liquidGone,
  anyOf.bottleFinished,
  anyOf.bottleRecorded,
)
const phone = 'labphone' as DeviceId
const written = (facts: readonly Fact[]): readonly Entry<Fact>[] => {
  let last: Stamp | undefined
  return facts.map((fact) => {
    last = nextStamp(last, fact.at, phone)
    return { id: last, fact }
  })
}
const anyBusyLedger = fc
  .tuple(
    fc.array(anyOf.bottleRecorded, { minLength: 1, maxLength: 4 }),
    fc.array(anyBusy, { maxLength: 40, size: 'max' }),
  )
  .map(([bottles, facts]) => written([...bottles, ...facts]))

test('the parts of a closing sheet are whole microlitres and sum to what was in the bottle', () => {
  const met = { parts: 0, joined: 0, counted: 0, measured: 0 }
  fc.assert(
    fc.property(fc.oneof(anyBusyLedger, anyLedger), (ledger) => {
      const world = fold(ledger)
      const lots = [...world.lots.values()]
      met.parts += Number(lots.some(({ partOf, made }) => partOf && made.kind === 'portionsFrozen'))
      met.joined += Number(lots.some(({ joined }) => joined.length > 0))
      met.counted += Number(lots.some(({ observations }) => observations.length > 0))
      met.measured += Number([...world.bottles.values()].some(({ observations }) => observations.length > 0))
      for (const { held, parts, made, went, whole } of sums(world)) {
        expect(parts).toBe(held)
        expect(went).toBe(made)
        expect(whole).toBe(true)
      }
    }),
    { numRuns: 600 },
  )
  for (const often of Object.values(met)) expect(often).toBeGreaterThan(20)
})

test('the walk leaves in every bag what the fold leaves in it', () => {
  let joined = 0
  fc.assert(
    fc.property(anyBusyLedger, (ledger) => {
      // Portions that never came out of a bottle are in no account.
      const world = fold(ledger.filter(({ fact }) => fact.kind !== 'portionsOnHand'))
      const lots = [...world.lots.values()].filter(
        ({ made }) => made.kind === 'portionsFrozen' && world.bottles.has(made.bottle),
      )
      if (lots.length < world.lots.size) return
      joined += Number(lots.some((lot) => lot.joined.length > 0))
      const standing = new Map<string, number>()
      for (const account of bottleAccounts(world).values())
        for (const made of account.lots)
          for (const { lot, count } of made.standing) standing.set(lot.id, (standing.get(lot.id) ?? 0) + count)
      for (const { id, left } of lots) expect(standing.get(id) ?? 0).toBe(left)
    }),
    { numRuns: 400 },
  )
  expect(joined).toBeGreaterThan(10)
})
