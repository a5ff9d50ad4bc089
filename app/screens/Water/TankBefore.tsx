/** What a tank was before: how much water it held, and from when; and what else was another. */
import { type Day, type TankDescribed, volumesHeld, wallDay } from '../../../core/index.ts'
import { Line, Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { dayWords, weekday } from '../../words/dates.ts'
import { volumeHeldWords } from '../../words/volume.ts'
import type { Reading } from '../useReading.ts'

type Props = { readonly tank: TankDescribed; readonly today: Day; readonly reading: Reading }

export const TankBefore = ({ tank, today, reading: { world, now } }: Props) => {
  const volumes = volumesHeld(world, tank.tank, now)
  const from = ({ at, zone }: Pick<TankDescribed, 'at' | 'zone'>) => {
    const day = wallDay(at, zone)
    return `from ${weekday(day)}, ${dayWords(day, today)}`
  }
  const described = world.tanks.get(tank.tank) ?? []
  const changed = described.filter((each, place) => {
    const next = described[place + 1]
    return each !== tank && !(next && sameButWater(each, next))
  })
  return (
    <>
      {volumes.length > 1 && (
        <MoreExact label="How much water, from when" of={tank.name}>
          <Lines>
            {volumes.toReversed().map((held) => (
              <Line key={held.from} lead={from({ at: held.from, zone: tank.zone })}>
                {volumeHeldWords(held.water)}
              </Line>
            ))}
          </Lines>
          <p>A dose is judged by the water of its day.</p>
        </MoreExact>
      )}
      {changed.length > 0 && (
        <MoreExact label="What it was before" of={tank.name}>
          <Lines>
            {changed.toReversed().map((each) => (
              <Line key={each.at} lead={from(each)}>
                {`${each.name}, lights out at ${each.lightsOut}`}
              </Line>
            ))}
          </Lines>
        </MoreExact>
      )}
    </>
  )
}

const sameButWater = (one: TankDescribed, other: TankDescribed): boolean =>
  one.name === other.name &&
  one.lightsOut === other.lightsOut &&
  one.lamp === other.lamp &&
  one.zone === other.zone &&
  one.pipetteMark === other.pipetteMark
