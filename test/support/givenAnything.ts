/** Ledgers of anything at all: every kind of fact, about few things, so that they meet, contradict and outrun each other. */
import fc from 'fast-check'
import { type DeviceId, type Entry, type Fact, type Moment, moment, nextStamp, type Stamp } from '../../core/index.ts'
import { anyOf } from '../fixtures/facts.ts'

const anyFact: fc.Arbitrary<Fact> = fc.oneof(...Object.values(anyOf))
/** What moves a count, more often than the rest. */
const anyCounted: fc.Arbitrary<Fact> = fc.oneof(
  anyOf.portionsFrozen,
  anyOf.portionsOnHand,
  anyOf.portionsCounted,
  anyOf.portionsFound,
  anyOf.portionsGone,
  anyOf.bottleRecorded,
  anyOf.liquidMeasured,
  anyOf.liquidGone,
  anyOf.portionsMoved,
  anyOf.portionsMoved,
  anyOf.portionsGivenAway,
  anyOf.nightsCounted,
  anyOf.doseGiven,
  anyOf.doseGivenOffPlan,
  anyOf.entryStruckOut,
)

const phones = ['labphone', 'kitchenphone'] as DeviceId[]
const anyLine = fc.record({
  fact: fc.oneof(anyFact, anyCounted),
  phone: fc.constantFrom(...phones),
  /** Most facts are written down soon, some long before the moment they name. */
  early: fc.oneof({ arbitrary: fc.constant(0), weight: 9 }, { arbitrary: fc.integer({ min: 1, max: 40 }), weight: 1 }),
  aims: fc.nat(),
})

/** A ledger whose strike-outs cross out entries that are there, strike-outs among them. */
export const anyLedger: fc.Arbitrary<readonly Entry<Fact>[]> = fc
  .array(anyLine, { minLength: 1, maxLength: 40, size: 'max' })
  .map((lines) => {
    const ids: Stamp[] = []
    const latest = new Map<DeviceId, Stamp>()
    for (const { fact, phone, early } of lines) {
      const id = nextStamp(latest.get(phone), moment(fact.at - early * 86_400_000) as Moment, phone)
      latest.set(phone, id)
      ids.push(id)
    }
    return lines.map(({ fact, aims }, index): Entry<Fact> => {
      const id = ids[index]
      const target = ids[aims % ids.length]
      if (!id || !target) throw new Error('no such line')
      return { id, fact: fact.kind === 'entryStruckOut' ? { ...fact, target } : fact }
    })
  })
