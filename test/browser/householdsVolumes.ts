/** A household that measured its tank, and changed its rock. */
import { describeTank, type Entry, type Fact, type Moment, type TankAsked } from '../../core/index.ts'
import { at, done, given, london } from '../support/given.ts'
import { doors, foodOf, greenFood, longGallery, mL, moveIn, onHand, planOf } from '../support/givenLab.ts'

const described = (when: Moment, water: TankAsked['water']): readonly Fact[] => {
  const rest = { zone: london, lightsOut: '21:00', pipetteMark: mL(0.05) }
  return done(describeTank({ tank: longGallery, name: 'Long Gallery', water, ...rest }, when))
}
const stated = { value: 400, unit: 'L' } as const
const bowFront = {
  shape: { form: 'bowFront', length: 120, width: 45, bow: 10 },
  measures: { taken: 'outside', height: 60, glass: 12, base: 15, down: 4 },
  sump: { value: 62, unit: 'L' },
} as const

export const householdsVolumes = {
  measuredTank: (): readonly Entry<Fact>[] =>
    given(
      described(moveIn, { stated, about: true, doseBy: 'stated' }),
      described(at('2026-03-08 15:20'), {
        stated,
        about: true,
        exact: { ...bowFront, solids: { by: 'share', share: 0.12 } },
        doseBy: 'stated',
      }),
      described(at('2026-11-14 16:05'), {
        stated,
        about: true,
        exact: { ...bowFront, solids: { by: 'sandAndRock', sandDepth: 3.5, rockKg: 28 } },
        doseBy: 'true',
      }),
      foodOf(greenFood, { name: 'Green food' }),
      doors,
      onHand({ portions: 40, each: 1, frozen: '2026-09-04' }),
      planOf({ first: '2026-11-25', amount: 1 }),
    ).entries(),
}
