/** The night planned, and planned anew: when the pumps go off, what goes where, and every step with its hour before it is saved. */
import { useParams } from 'wouter'
import { equipmentAt, planMayChange, type RunId, runNow, treatedAt } from '../../../core/index.ts'
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { Page } from '../../parts/Page.tsx'
import { seedingRefusal } from '../../words/seedingRefusals.ts'
import { NightForm } from './NightForm.tsx'
import type { OfTank } from './ofTank.ts'

export const PlanNight = ({ tank, reading }: OfTank) => {
  const { world, now } = reading
  const equipment = equipmentAt(world, tank.tank, now)
  const treated = treatedAt(world, tank.tank, now)?.with ?? 'nothing'
  if (!equipment)
    return (
      <Page title="The night" when={tank.name} answer={seedingRefusal({ why: 'noEquipment' }, reading)}>
        <Actions>
          <ButtonLink href={`#/seeding/${tank.tank}/equipment`}>Say what runs here</ButtonLink>
        </Actions>
      </Page>
    )
  return (
    <Page
      title="The night"
      when={tank.name}
      answer={
        treated === 'nothing'
          ? 'When do the pumps go off? Everything else follows from that.'
          : seedingRefusal({ why: 'treatedWater', with: treated }, reading)
      }
    >
      <NightForm tank={tank} reading={reading} />
      {treated !== 'nothing' && (
        <p>
          <a href={`#/seeding/${tank.tank}/poured`}>Poured already: write it down as it was</a>
        </p>
      )}
    </Page>
  )
}

export const ChangePlan = ({ tank, reading }: OfTank) => {
  const { world, now } = reading
  const { run: id } = useParams<{ run: RunId }>()
  const known = world.runs.get(id)
  const run = known && runNow(known, now)
  const ours = run?.plan.tank === tank.tank
  const open = ours && planMayChange(run)
  const treated = treatedAt(world, tank.tank, now)?.with ?? 'nothing'
  return (
    <Page
      title="Change the plan"
      when={tank.name}
      answer={
        !open
          ? seedingRefusal({ why: ours ? 'underWay' : 'noSuchRun' }, reading)
          : treated === 'nothing'
            ? 'What is different? What is ticked stays ticked.'
            : seedingRefusal({ why: 'treatedWater', with: treated }, reading)
      }
    >
      {open && <NightForm key={id} tank={tank} reading={reading} plan={run.plan} />}
      <p>
        <a href={ours ? `#/seeding/run/${id}` : `#/seeding/${tank.tank}`}>
          {ours ? 'Back to the night' : `Live bottles for ${tank.name}`}
        </a>
      </p>
    </Page>
  )
}
