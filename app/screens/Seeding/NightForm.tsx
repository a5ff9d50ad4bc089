/** The plan of a night as it is typed: when the pumps go off, what goes where, and every step with its hour before it is saved. */
import { useLocation } from 'wouter'
import {
  bottledIn,
  equipmentAt,
  plannedIn,
  planSeeding,
  pourNights,
  type SeedingPlanned,
  type SeedingRefusal,
  type SeedingStep,
  saltOfPour,
  stepsForRun,
  wallDay,
  whichOn,
} from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { now as nowIs } from '../../state/clock.ts'
import { useDraft } from '../../state/useDraft.ts'
import { clock } from '../../words/dates.ts'
import { millilitres } from '../../words/numbers.ts'
import { clockAt, pourNightHint, pourNightWords, saltWords } from '../../words/seeding.ts'
import { stepName, type WhichIs } from '../../words/steps.ts'
import { Unfinished } from '../Unfinished.tsx'
import type { Reading } from '../useReading.ts'
import { BottlesInto, HoldsField } from './BottleFields.tsx'
import type { OfTank } from './ofTank.ts'
import { PourFields } from './PourFields.tsx'
import { fieldsOfPlan, type PlanFields, parcelOf, planFields, readPlan, usualOff } from './planFields.ts'
import { placed, useSeeding, wrong } from './useSeeding.ts'
import { WholeForm } from './WholeForm.tsx'

type NightFormProps = OfTank & {
  /** The plan in force, where it is written again. */
  readonly plan?: SeedingPlanned | undefined
}

export const NightForm = ({ tank, reading, plan }: NightFormProps) => {
  const { world, now, zone, today } = reading
  const act = useSeeding(reading)
  const [, go] = useLocation()
  const fresh = planFields(world, tank, now)
  const {
    fields: typed,
    change: type,
    clear,
    restoredFrom,
  } = useDraft(`seeding/plan/${plan ? plan.run : tank.tank}`, plan ? fieldsOfPlan(plan, tank) : fresh)
  const equipment = equipmentAt(world, tank.tank, now)
  const came = parcelOf(plan, world, now)?.came
  const nights = pourNights(world, tank, came ?? now, now)
  // Of another evening it keeps its words and takes a night that is still to come.
  const fields = nights.some(({ night }) => night === typed.night) ? typed : { ...typed, night: fresh.night }
  const change = (changed: Partial<PlanFields>) => {
    act.reset()
    type(changed)
  }
  const read = readPlan(fields, tank, world, now, plan)
  const steps = read.asked && equipment && read.asked.pours.length > 0 ? stepsForRun(world, equipment, read.asked) : []
  const salt = read.asked && saltOfPour(read.asked, tank.water, bottledIn(read.asked))
  const chosen = nights.find(({ night }) => night === fields.night)
  const save = async () => {
    const written = await act.send((latest, { now: at }) => {
      const { found, asked } = readPlan(fields, tank, latest, at, plan)
      return asked ? placed(planSeeding(latest, asked, at), fieldOf) : wrong(found)
    })
    if (!written) return
    await clear()
    go(`/seeding/run/${fields.run}`)
  }
  return (
    <Form onSend={save}>
      <Unfinished since={restoredFrom} zone={zone} today={today} onFresh={() => void clear()} />
      <Choice
        label="Which night?"
        options={nights.map((night) => ({
          value: night.night as string,
          label: pourNightWords(night, tank, now),
          hint: pourNightHint(night, came !== undefined),
        }))}
        value={fields.night}
        onChange={(day) => {
          const night = nights.find((each) => each.night === day)
          if (night) change({ night: night.night, off: clock(usualOff(world, tank, night.night, nowIs()), zone) })
        }}
      />
      {chosen?.is === 'decide' && came !== undefined && (
        <Field
          label="Why so late?"
          hint="May be left empty; it is kept with the plan."
          value={fields.anyway}
          onChange={(anyway) => change({ anyway })}
        />
      )}
      <ClockField
        label="When do the pumps go off?"
        hint="They are off for an hour at most. Half an hour before, the first things stop."
        value={fields.off}
        onChange={(off) => change({ off })}
        error={act.wrong('off')}
      />
      <ClockField
        label="When is everything else switched on in the morning?"
        value={fields.morning}
        onChange={(morning) => change({ morning })}
        error={act.wrong('morning')}
      />
      <BottlesInto
        places={equipment?.places.map(({ place }) => place) ?? []}
        fields={fields}
        change={change}
        act={act}
      />
      <HoldsField fields={fields} change={change} act={act} />
      <PourFields fields={fields} change={change} act={act} />
      {read.asked && steps.length > 0 && (
        <Section title="So it will go">
          <p>{millilitres(plannedIn(read.asked))} come in, and as much tank water leaves.</p>
          {salt && <p>{saltWords(salt)}</p>}
          <StepLines steps={steps} which={whichOn(world, tank.tank)} reading={reading} />
        </Section>
      )}
      <WholeForm act={act}>
        {act.whys.some((why) => why === 'killsWhatIsPoured') && (
          <p>
            <a href={`#/seeding/${tank.tank}/equipment`}>Change what stops</a>
          </p>
        )}
      </WholeForm>
      <Actions>
        <Button submit waiting={act.busy}>
          {plan ? 'Change it so' : 'Plan it so'}
        </Button>
      </Actions>
    </Form>
  )
}

type StepLinesProps = { readonly steps: readonly SeedingStep[]; readonly which: WhichIs; readonly reading: Reading }
const StepLines = ({ steps, which, reading }: StepLinesProps) => (
  <Lines>
    {steps.map(({ step, at }) => (
      <Line key={step} lead={clockAt(at, reading, wallDay(at, reading.zone))}>
        {stepName(step, which)}
      </Line>
    ))}
  </Lines>
)

const fieldOf = (refusal: SeedingRefusal): string => {
  switch (refusal.why) {
    case 'displayLit':
    case 'alreadyGone':
      return 'off'
    case 'morningFirst':
      return 'morning'
    case 'bottlesNotPositive':
      return refusal.into
    case 'nothingToPour':
      return 'pours'
    case 'notSalinity':
      return refusal.of
    default:
      return ''
  }
}
