/** Far too much went in: what to do now, then what it may add to the water, then a rest from feeding. */
import {
  farTooMuchLately,
  foodAt,
  litres,
  type Microlitres,
  nightOf,
  nutrientsOf,
  nutrientWater,
  type PlanId,
  type PlanMade,
  plansAt,
  readMillilitres,
  type TankDescribed,
  tankAt,
} from '../../../../core/index.ts'
import { ButtonLink } from '../../../parts/Actions.tsx'
import { Choice } from '../../../parts/Choice.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { NumberField } from '../../../parts/NumberField.tsx'
import { Page } from '../../../parts/Page.tsx'
import { Section } from '../../../parts/Section.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { fieldText } from '../../../words/foodRefusals.ts'
import { foodName, tankName } from '../../../words/names.ts'
import { about, typedMillilitres, water } from '../../../words/numbers.ts'
import { gasping, handsDry, nutrientWords, tooMuchSteps, upperEstimate } from '../../../words/tooMuch.ts'
import { type Reading, useReading } from '../../useReading.ts'
import { RestFromFeeding } from './RestFromFeeding.tsx'

export const TooMuch = ({ plan: named }: { readonly plan: PlanId | undefined }) => {
  const reading = useReading()
  const { world, now } = reading
  const plans = plansAt(world, now)
  return (
    <Page title="Far too much went in" answer="Air and flow first: the figures can wait.">
      <ol className="steps">
        {tooMuchSteps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <Notice kind="caution">{gasping}</Notice>
      <Notice kind="caution">{handsDry}</Notice>
      {plans.length > 0 && (
        <Figures plans={plans} usual={plans.find(({ plan }) => plan === named) ?? plans[0]} reading={reading} />
      )}
    </Page>
  )
}

type FiguresProps = {
  readonly plans: readonly PlanMade[]
  readonly usual: PlanMade | undefined
  readonly reading: Reading
}

const Figures = ({ plans, usual, reading }: FiguresProps) => {
  const { world, now } = reading
  const { fields, change } = useDraft<{ plan: PlanId | ''; poured: string | null }>(`tooMuch/${usual?.plan ?? ''}`, {
    plan: usual?.plan ?? '',
    poured: null,
  })
  const plan = plans.find((each) => each.plan === fields.plan) ?? usual
  const tank = plan && tankAt(world, plan.tank, now)
  if (!plan || !tank) return null
  const noted = farTooMuchLately(world, plan, nightOf(now, tank))
  const typed = fields.poured ?? (noted ? typedMillilitres(noted.amount as Microlitres) : '')
  return (
    <>
      <Section title="What it may add to the water">
        {plans.length > 1 && (
          <Choice
            label="What went into which tank?"
            options={plans.map((each): { value: string; label: string } => ({
              value: each.plan,
              label: `${foodName(world, each.food, now)} into ${tankName(world, each.tank, now)}`,
            }))}
            value={plan.plan}
            onChange={(chosen) => change({ plan: plans.find((each) => each.plan === chosen)?.plan ?? '' })}
          />
        )}
        <Estimate plan={plan} tank={tank} typed={typed} reading={reading} onChange={(poured) => change({ poured })} />
        {!noted && (
          <p>
            <ButtonLink kind="quiet" href={`#/dose/${plan.plan}`}>
              Note what went in
            </ButtonLink>
          </p>
        )}
      </Section>
      <RestFromFeeding key={plan.tank} tank={tank} plan={plan} noted={noted?.night} reading={reading} />
    </>
  )
}

type EstimateProps = {
  readonly plan: PlanMade
  readonly tank: TankDescribed
  readonly typed: string
  readonly reading: Reading
  readonly onChange: (typed: string) => void
}

const Estimate = ({ plan, tank, typed, reading, onChange }: EstimateProps) => {
  const { world, now } = reading
  const food = foodAt(world, plan.food, now)
  const volume = nutrientWater(tank.water)
  const amount = typed.trim() === '' ? undefined : readMillilitres(typed)
  const adds = amount?.ok && volume ? nutrientsOf(amount.value, food?.contents, litres(volume)) : undefined
  return (
    <>
      <NumberField
        label="How much went in?"
        unit="mL"
        value={typed}
        onChange={onChange}
        error={amount && !amount.ok ? fieldText(amount.refusal, reading) : undefined}
      />
      <output className="said">{adds ? nutrientWords(adds) : ''}</output>
      {adds && volume && (
        <p className="shelf-facts">
          {upperEstimate} {about(adds.dry / 1000)} g of dry matter in {water(volume)}.
        </p>
      )}
      {!food?.contents && (
        <p>
          What is in a millilitre of {food?.name ?? 'this food'} is not known here, so no figure can be given.{' '}
          <a className="kind-link" href={`#/food/kind/${plan.food}`}>
            Its label may say
          </a>
        </p>
      )}
    </>
  )
}
