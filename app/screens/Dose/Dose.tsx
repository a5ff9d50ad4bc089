/** A dose written down exactly: which tanks, from where, how much, when and why. For daylight, or for what a touch cannot say. */
import { useState } from 'react'
import { useParams } from 'wouter'
import {
  type Entry,
  type Fact,
  type PlanId,
  type PlanMade,
  planAt,
  type TankDescribed,
  tankAt,
  tanksAt,
} from '../../../core/index.ts'
import { ButtonLink } from '../../parts/Actions.tsx'
import { Empty } from '../../parts/Empty.tsx'
import { Page } from '../../parts/Page.tsx'
import { useReading } from '../useReading.ts'
import { DoseForm } from './DoseForm.tsx'
import { DoseNoted } from './DoseNoted.tsx'

export const Dose = () => {
  const { plan: id } = useParams<{ plan: PlanId }>()
  const { world, now } = useReading()
  const plan = planAt(world, id, now)
  const tank = plan && tankAt(world, plan.tank, now)
  if (!plan || !tank)
    return (
      <Page title="A dose" answer="This plan is not on record.">
        <Empty says="It may have been crossed out, or come with another phone’s backup.">
          <ButtonLink href="#/">Back to Tonight</ButtonLink>
        </Empty>
      </Page>
    )
  return <Known key={id} plan={plan} tank={tank} />
}

const Known = ({ plan, tank }: { readonly plan: PlanMade; readonly tank: TankDescribed }) => {
  const reading = useReading()
  // Tonight shows the tank that is due next, which may be another one: what was noted is said here, where it was done.
  const [noted, setNoted] = useState<readonly Entry<Fact>[]>()
  return (
    <Page title="A dose" answer={noted ? 'It is in the diary.' : 'What reached the water, from where, and when?'}>
      {noted ? (
        <DoseNoted written={noted} reading={reading} onMore={() => setNoted(undefined)} />
      ) : (
        <DoseForm
          plan={plan}
          tank={tank}
          tanks={tanksAt(reading.world, reading.now)}
          reading={reading}
          onNoted={(written) => {
            setNoted(written)
            document.documentElement.scrollTop = 0
          }}
        />
      )}
    </Page>
  )
}
