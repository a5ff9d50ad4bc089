/**
 * Lives of a bag in trays, through the requests a person has: portions add up wherever they stand, and the drawing agrees
 * with the count. Laws of our own.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  countPortions,
  type Fact,
  fillTrays,
  giveAway,
  type LotId,
  type Moment,
  movePortions,
  portionsFound,
  portionsGone,
  type Result,
  touchWell,
  traysNow,
  type World,
} from '../../../core/index.ts'
import { holds, tally } from '../../fixtures/laws.ts'
import { at, given } from '../../support/given.ts'
import { blueClip, boathouseFreezer, kitchenFreezer, lab, onHand } from '../../support/givenLab.ts'

const step = fc.record({
  does: fc.constantFrom('touch', 'touch', 'lose', 'move', 'move', 'give', 'find', 'count', 'moveAll'),
  which: fc.nat(5),
  much: fc.integer({ min: 1, max: 12 }),
  well: fc.nat(11),
  tray: fc.nat(3),
})
type Step = typeof step extends fc.Arbitrary<infer Value> ? Value : never

const total = ({ lots }: World) => [...lots.values()].reduce((sum, { left }) => sum + left, 0)
const request =
  ({ does, which, much, well, tray }: Step, at: number, now: Moment) =>
  (world: World): Result<readonly Fact[], unknown> => {
    const lots = [...world.lots.values()]
    const lot = lots[which % lots.length]
    const id = lot?.id ?? blueClip
    const left = lot?.left ?? 0
    switch (does) {
      case 'touch':
        return touchWell(world, { lot: id, tray, well }, now)
      case 'lose':
        return portionsGone(world, { lot: id, count: much, fate: 'lost' }, now)
      case 'give':
        return giveAway(world, { lot: id, count: much }, now)
      case 'find':
        return portionsFound(world, { lot: id, count: 1 }, now)
      case 'count':
        return countPortions(world, { lot: id, counted: Math.max(0, left - (much % 3)) }, now)
      case 'move':
      case 'moveAll': {
        const count = does === 'move' ? much : left
        const to = lot?.place === kitchenFreezer ? boathouseFreezer : kitchenFreezer
        const kept = { as: 'trays' as const, trays: fillTrays(count, 3, 4) }
        return movePortions(world, { from: id, to, count, lot: `part${at}` as LotId, mark: 'part', kept }, now)
      }
    }
  }

test('moves change no total, and the wells drawn hold what the trays are said to hold', () => {
  const cases = tally('moved in part', 'moved whole', 'touched', 'touched beyond the book', 'a part of a part', 'drawn')
  const law = fc.property(
    fc.integer({ min: 1, max: 40 }),
    fc.array(step, { minLength: 4, maxLength: 14 }),
    (portions, steps) => {
      const kept = { as: 'trays' as const, trays: fillTrays(portions, 3, 4) }
      const book = given(lab, onHand({ portions, each: 1, frozen: '2027-01-05', kept }))
      for (const [index, each] of steps.entries()) {
        const before = book.world()
        const asked = request(each, index, (at('2027-01-06 12:00') + index * 60_000) as Moment)(before)
        if (!asked.ok) continue
        book.note(...asked.value)
        const world = book.world()
        const [fact] = asked.value
        const moves = fact?.kind === 'portionsMoved' || fact?.kind === 'lotMoved'
        if (moves || fact?.kind === 'wellsSeen') expect(total(world)).toBe(total(before))
        if (fact?.kind === 'lotMoved') expect(world.lots.get(fact.lot)?.left).toBe(before.lots.get(fact.lot)?.left)
        expect(world.oddities).toEqual([])
        for (const lot of world.lots.values()) {
          const now = traysNow(lot)
          if (!now) continue
          for (const { holds: said, wells } of now.trays) expect(wells.filter(Boolean)).toHaveLength(said)
          const drawn = now.trays.reduce((sum, tray) => sum + tray.holds, 0)
          // What was found beyond the trays stands in none of them.
          const room = now.trays.reduce((sum, { filled }) => sum + filled, 0)
          if (now.beyondBook === 0) expect(drawn).toBe(Math.min(room, lot.left))
          cases.note('drawn')
          cases.note('touched beyond the book', now.beyondBook > 0)
        }
        cases.note('moved in part', fact?.kind === 'portionsMoved')
        cases.note('moved whole', fact?.kind === 'lotMoved')
        cases.note('touched', fact?.kind === 'wellsSeen')
        cases.note(
          'a part of a part',
          [...world.lots.values()].some(
            ({ partOf }) => partOf !== undefined && world.lots.get(partOf)?.partOf !== undefined,
          ),
        )
      }
    },
  )
  holds(law, 200)
  cases.expectAtLeast(10)
}, 60_000)
