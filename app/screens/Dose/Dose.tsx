/** A dose written down exactly: which tanks, from where, how much, when and why. For daylight, or for what a touch cannot say. */
import { useState } from 'react'
import { useLocation, useParams } from 'wouter'
import {
  nightOf,
  type PlanId,
  type PlanMade,
  planAt,
  type TankDescribed,
  tankAt,
  tanksAt,
} from '../../../core/index.ts'
import { ButtonLink } from '../../parts/Actions.tsx'
import { Empty } from '../../parts/Empty.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { useReading } from '../useReading.ts'
import { DoseForm } from './DoseForm.tsx'

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
  const [, go] = useLocation()
  const [noted, setNoted] = useState<string>()
  const tonight = nightOf(reading.now, tank)
  return (
    <Page title="A dose" answer="What reached the water, from where, and when?">
      {noted && (
        <Notice>
          <p>
            <output>Noted. {noted}</output>
          </p>
          <ButtonLink kind="quiet" href="#/">
            Back to Tonight
          </ButtonLink>
        </Notice>
      )}
      <DoseForm
        plan={plan}
        tank={tank}
        tanks={tanksAt(reading.world, reading.now)}
        reading={reading}
        // Tonight says what is noted for tonight; of another night it would say nothing.
        onNoted={(night, says) => (night === tonight ? go('/') : setNoted(says))}
      />
    </Page>
  )
}
