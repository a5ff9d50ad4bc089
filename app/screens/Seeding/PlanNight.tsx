/** The night planned: when the pumps go off, what goes where, and every step with its hour before it is saved. */
import { useLocation } from 'wouter'
import {
  equipmentAt,
  plannedIn,
  planSeeding,
  pourNights,
  type SeedingRefusal,
  type SeedingStep,
  stepsOf,
  treatedAt,
  wallDay,
} from '../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Page } from '../../parts/Page.tsx'
import { Picks } from '../../parts/Picks.tsx'
import { Section } from '../../parts/Section.tsx'
import { now as nowIs } from '../../state/clock.ts'
import { useDraft } from '../../state/useDraft.ts'
import { clock } from '../../words/dates.ts'
import { millilitres } from '../../words/numbers.ts'
import {
  animalOptions,
  clockAt,
  pourNightHint,
  pourNightWords,
  rinseOptions,
  waterOutOptions,
} from '../../words/seeding.ts'
import { seedingRefusal } from '../../words/seedingRefusals.ts'
import { stepName } from '../../words/steps.ts'
import { Unfinished } from '../Unfinished.tsx'
import type { Reading } from '../useReading.ts'
import { BottlesInto, HoldsField } from './BottleFields.tsx'
import type { OfTank } from './ofTank.ts'
import { latestParcel, type PlanFields, planFields, readPlan, usualOff } from './planFields.ts'
import { placed, useSeeding, wrong } from './useSeeding.ts'
import { WholeForm } from './WholeForm.tsx'

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
    default:
      return ''
  }
}

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

const NightForm = ({ tank, reading }: OfTank) => {
  const { world, now, zone, today } = reading
  const act = useSeeding(reading)
  const [, go] = useLocation()
  const initial = planFields(world, tank, now)
  const { fields: typed, change: type, clear, restoredFrom } = useDraft(`seeding/plan/${tank.tank}`, initial)
  const equipment = equipmentAt(world, tank.tank, now)
  const came = latestParcel(world, now)?.came
  const nights = pourNights(world, tank, came ?? now, now)
  // A draft of another evening keeps its words and takes a night that is still to come.
  const fields = nights.some(({ night }) => night === typed.night) ? typed : { ...typed, night: initial.night }
  const change = (changed: Partial<PlanFields>) => {
    act.reset()
    type(changed)
  }
  const read = readPlan(fields, tank, world, now)
  const steps = read.asked && equipment && read.asked.pours.length > 0 ? stepsOf(equipment, read.asked) : []
  const chosen = nights.find(({ night }) => night === fields.night)
  const save = async () => {
    const written = await act.send((fresh, { now: at }) => {
      const { found, asked } = readPlan(fields, tank, fresh, at)
      return asked ? placed(planSeeding(fresh, asked, at), fieldOf) : wrong(found)
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
      <MoreExact
        label="Water out, rinsing, and what is in them"
        open={act.wrong('rinseEach') !== undefined || act.wrong('animals') !== undefined}
      >
        <Choice
          label="When is tank water taken out?"
          hint="As much as comes in with the bottles."
          options={waterOutOptions}
          value={fields.waterOut}
          onChange={(waterOut) => change({ waterOut })}
        />
        <Choice
          label="How are the bottles rinsed?"
          options={rinseOptions}
          value={fields.rinse}
          onChange={(rinse) => change({ rinse })}
        />
        {fields.rinse !== 'none' && (
          <NumberField
            label="How much for each bottle?"
            unit="mL"
            value={fields.rinseEach}
            onChange={(rinseEach) => change({ rinseEach })}
            error={act.wrong('rinseEach')}
          />
        )}
        <Picks
          label="What is in them?"
          options={animalOptions}
          values={fields.animals}
          onChange={(animals) => change({ animals })}
          error={act.wrong('animals')}
        />
      </MoreExact>
      {read.asked && steps.length > 0 && (
        <Section title="So it will go">
          <p>{millilitres(plannedIn(read.asked))} come in, and as much tank water leaves.</p>
          <StepLines steps={steps} reading={reading} />
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
          Plan it so
        </Button>
      </Actions>
    </Form>
  )
}

const StepLines = ({ steps, reading }: { readonly steps: readonly SeedingStep[]; readonly reading: Reading }) => (
  <Lines>
    {steps.map(({ step, at }) => (
      <Line key={step} lead={clockAt(at, reading, wallDay(at, reading.zone))}>
        {stepName(step)}
      </Line>
    ))}
  </Lines>
)
