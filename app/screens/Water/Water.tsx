/** Each tank: its water, its lamp, its plans. */
import { retiredTanksAt, type TankDescribed, tanksAt } from '../../../core/index.ts'
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { Empty } from '../../parts/Empty.tsx'
import { Page } from '../../parts/Page.tsx'
import { capital, inWords } from '../../words/numbers.ts'
import { doseWaterWords } from '../../words/volume.ts'
import { useReading } from '../useReading.ts'
import { Tank } from './Tank.tsx'
import { TanksThatWere } from './TanksThatWere.tsx'

export const Water = () => {
  const reading = useReading()
  const { world, now } = reading
  const tanks = tanksAt(world, now)
  const were = retiredTanksAt(world, now)
  return (
    <Page title="Water" answer={answer(tanks, were.length > 0)}>
      {tanks.length + were.length === 0 && (
        <Empty says="The first evening asks for one tank; more can follow here.">
          <ButtonLink href="#/">Begin</ButtonLink>
        </Empty>
      )}
      {tanks.map((tank) => (
        <Tank key={tank.tank} tank={tank} reading={reading} />
      ))}
      {tanks.length + were.length > 0 && (
        <Actions>
          <ButtonLink kind="quiet" href="#/water/tank/new">
            Another tank
          </ButtonLink>
        </Actions>
      )}
      <TanksThatWere tanks={were} reading={reading} />
    </Page>
  )
}

const answer = (tanks: readonly TankDescribed[], were: boolean): string => {
  const [first] = tanks
  if (!first) return were ? 'No tank is kept now.' : 'No tank is described yet.'
  if (tanks.length === 1) return `${first.name}: ${doseWaterWords(first.water)}, lights out at ${first.lightsOut}.`
  return `${capital(inWords(tanks.length))} tanks.`
}
