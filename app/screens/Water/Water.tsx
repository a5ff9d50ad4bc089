/** Each tank: its water, its lamp, its plans. */
import {
  bandOf,
  doseWater,
  foodAt,
  litres,
  type Moment,
  plansAt,
  type TankDescribed,
  tanksAt,
  trueWater,
  usGallons,
  type WaterAmount,
  type World,
  wallDay,
} from '../../../core/index.ts'
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { Empty } from '../../parts/Empty.tsx'
import { Facts } from '../../parts/Facts.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { dayWords } from '../../words/dates.ts'
import { zoneWords } from '../../words/entries.ts'
import { about, inWords, millilitres, water } from '../../words/numbers.ts'
import { aboveWords, bandSource, bandWords, planWords } from '../../words/plan.ts'
import { useReading } from '../useReading.ts'

export const Water = () => {
  const { world, now } = useReading()
  const tanks = tanksAt(world, now)
  return (
    <Page title="Water" answer={answer(tanks)}>
      {tanks.length === 0 && (
        <Empty says="The first evening asks for one tank; more can follow here.">
          <ButtonLink href="#/">Begin</ButtonLink>
        </Empty>
      )}
      {tanks.map((tank) => (
        <Tank key={tank.tank} tank={tank} world={world} now={now} />
      ))}
      {tanks.length > 0 && (
        <Actions>
          <ButtonLink kind="quiet" href="#/water/tank/new">
            Another tank
          </ButtonLink>
        </Actions>
      )}
    </Page>
  )
}

const answer = (tanks: readonly TankDescribed[]): string => {
  const [first] = tanks
  if (!first) return 'No tank is described yet.'
  if (tanks.length === 1)
    return `${first.name}: ${howMuch(doseWater(first.water), first.water.about)}, lights out at ${first.lightsOut}.`
  return `${inWords(tanks.length)} tanks.`.replace(/^./, (letter) => letter.toUpperCase())
}

const howMuch = (amount: WaterAmount | undefined, roughly: boolean): string =>
  amount ? `${roughly ? 'about ' : ''}${water(amount)}` : 'volume not known'

type TankProps = { readonly tank: TankDescribed; readonly world: World; readonly now: Moment }

const Tank = ({ tank, world, now }: TankProps) => {
  const reckoned = doseWater(tank.water)
  const real = trueWater(tank.water)
  const plans = plansAt(world, now).filter((plan) => plan.tank === tank.tank)
  const earlier = (world.tanks.get(tank.tank) ?? []).filter((described) => described !== tank)
  const today = wallDay(now, tank.zone)
  return (
    <Section title={tank.name}>
      <Facts
        facts={[
          {
            term: 'Water',
            fact: howMuch(reckoned, tank.water.about),
            note: reckoned && `${about(litres(reckoned))} litres, ${about(usGallons(reckoned))} US gallons`,
          },
          ...(real ? [{ term: 'True volume', fact: `${about(litres(real))} litres` }] : []),
          { term: 'Lights out', fact: tank.lightsOut, note: zoneWords(tank.zone) },
          { term: 'Pipette’s mark', fact: millilitres(tank.pipetteMark) },
        ]}
      />
      <Lines>
        {plans.flatMap((plan) => {
          const food = foodAt(world, plan.food, now)
          if (!food) return []
          return [
            <Line
              key={plan.plan}
              lead="Plan"
              end={
                <a className="link" href={`#/water/plan/${tank.tank}/${food.food}`}>
                  Change
                </a>
              }
            >
              <p>{`${planWords(plan, food)}${aboveWords(plan, bandOf(tank, food))}.`}</p>
              <p>{`${bandWords(bandOf(tank, food))} (${bandSource(food)})`}</p>
            </Line>,
          ]
        })}
      </Lines>
      {earlier.length > 0 && (
        <MoreExact label="What it was before">
          <Lines>
            {earlier.toReversed().map((described) => (
              <Line key={described.at} lead={`from ${dayWords(wallDay(described.at, described.zone), today)}`}>
                {`${howMuch(doseWater(described.water), described.water.about)}, lights out at ${described.lightsOut}`}
              </Line>
            ))}
          </Lines>
        </MoreExact>
      )}
      <Actions>
        <ButtonLink kind="quiet" href={`#/water/tank/${tank.tank}`}>
          Change this tank
        </ButtonLink>
        <ButtonLink kind="quiet" href={`#/water/plan/${tank.tank}`}>
          {plans.length === 0 ? 'Make a plan' : 'Another plan'}
        </ButtonLink>
      </Actions>
    </Section>
  )
}
