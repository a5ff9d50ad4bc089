/** One tank: its water, its lamp, what it is fed. */
import { lampOut, nightOf, plansAt, type TankDescribed, wallDay } from '../../../core/index.ts'
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { Facts } from '../../parts/Facts.tsx'
import { Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { phoneZone } from '../../state/phoneZone.ts'
import { bothClocks } from '../../words/bothClocks.ts'
import { zoneWords } from '../../words/entries.ts'
import { lampClocks } from '../../words/lamp.ts'
import { millilitres } from '../../words/numbers.ts'
import { tankWaterRows } from '../../words/volume.ts'
import type { Reading } from '../useReading.ts'
import { Lamp } from './Lamp.tsx'
import { Meeting } from './Meeting.tsx'
import { TankBefore } from './TankBefore.tsx'
import { TankPlan } from './TankPlan.tsx'

export const Tank = ({ tank, reading }: { readonly tank: TankDescribed; readonly reading: Reading }) => {
  const { world, now } = reading
  const plans = plansAt(world, now).filter((plan) => plan.tank === tank.tank)
  const today = wallDay(now, tank.zone)
  return (
    <Section title={tank.name}>
      <Facts
        facts={[
          ...tankWaterRows(tank.water),
          { term: 'Lights out', fact: tank.lightsOut, note: lampNote(tank, reading) },
          { term: 'Pipette’s mark', fact: millilitres(tank.pipetteMark) },
        ]}
      />
      <Lamp tank={tank} reading={reading} />
      <Lines>
        {plans.map((plan) => (
          <TankPlan key={plan.plan} plan={plan} tank={tank} reading={reading} />
        ))}
      </Lines>
      <Meeting tank={tank} plans={plans} reading={reading} />
      <TankBefore tank={tank} today={today} reading={reading} />
      <Actions>
        <ButtonLink kind="quiet" href={`#/water/${tank.tank}/life`}>
          The small life<span className="for-ears"> of {tank.name}</span>
        </ButtonLink>
        <ButtonLink kind="quiet" href={`#/water/tank/${tank.tank}`}>
          Change this tank<span className="for-ears">: {tank.name}</span>
        </ButtonLink>
        <ButtonLink kind="quiet" href={`#/water/plan/${tank.tank}`}>
          {plans.length === 0 ? 'Make a plan' : 'Another plan'}
          <span className="for-ears">: {tank.name}</span>
        </ButtonLink>
      </Actions>
      <Actions>
        <ButtonLink kind="quiet" href={`#/seeding/${tank.tank}`}>
          Live bottles<span className="for-ears">: {tank.name}</span>
        </ButtonLink>
      </Actions>
    </Section>
  )
}

/** The zone, what the lamp's clock does, and both clocks where she is elsewhere. */
const lampNote = (tank: TankDescribed, { world, now }: Reading): string => {
  const both = bothClocks(lampOut(world, tank, nightOf(now, tank)), tank.zone, phoneZone())
  return [zoneWords(tank.zone), tank.lamp && lampClocks[tank.lamp], both].filter(Boolean).join('; ')
}
