/** The pumps-off night: what to do next, large, with its hour; one tick under the thumb; by clock times, whatever happens to the phone. */
import './run.css'
import { useParams } from 'wouter'
import {
  inFront,
  planMayChange,
  type RunId,
  type RunNow,
  type RunStep,
  readStep,
  runNow,
  type TankDescribed,
  tankAt,
  toPourAt,
} from '../../../core/index.ts'
import { Button } from '../../parts/Actions.tsx'
import { BigAct, Dock } from '../../parts/BigAct.tsx'
import { Page } from '../../parts/Page.tsx'
import { UndoBar } from '../../parts/UndoBar.tsx'
import { useScreenLock } from '../../state/screenLock.ts'
import { nightWords } from '../../words/dates.ts'
import { millilitres } from '../../words/numbers.ts'
import { everythingOn, poursWords } from '../../words/seeding.ts'
import { stepTold } from '../../words/stepTold.ts'
import { KeepAwake } from '../KeepAwake.tsx'
import { type Reading, useReading } from '../useReading.ts'
import { AfterPour } from './AfterPour.tsx'
import { CallOff } from './CallOff.tsx'
import { ofTank } from './ofTank.ts'
import { RunAlarms } from './RunAlarms.tsx'
import { Pumps, RunAnswer } from './RunAnswer.tsx'
import { RunSteps } from './RunSteps.tsx'
import { Stopped } from './Stopped.tsx'
import { PourKeys, Tally, WaterKeys } from './Tally.tsx'
import { type Running, useRun } from './useRun.ts'
import { WholeForm } from './WholeForm.tsx'

export const Run = () => {
  const { run: id } = useParams<{ run: RunId }>()
  const reading = useReading()
  const known = reading.world.runs.get(id)
  const run = known && runNow(known, reading.now)
  const tank = run && tankAt(reading.world, run.plan.tank, reading.now)
  if (!run || !tank)
    return (
      <Page title="The night" answer="This night is not on record.">
        <p>
          <a href="#/water">All tanks</a>
        </p>
      </Page>
    )
  return <Night key={id} run={run} tank={tank} reading={ofTank(reading, tank)} />
}

type NightProps = { readonly run: RunNow; readonly tank: TankDescribed; readonly reading: Reading }

const Night = ({ run, tank, reading }: NightProps) => {
  const { now } = reading
  const running = useRun(run, reading)
  const front = inFront(run, now)
  const stopped = run.is === 'stopped'
  const done = run.is === 'done'
  const does = front && readStep(front.step)
  const told = front && stepTold(front.step, running.which)
  // Overnight the phone may sleep; the plan stands by clock times.
  const awake = run.is === 'begun' || run.is === 'pumpsOff'
  const wet = run.run.pours.length > 0
  /** The hour with the pumps off has not begun, and nothing is poured. */
  const ahead = (run.is === 'planned' || run.is === 'begun') && !wet
  return (
    <Page
      title={tank.name}
      when={nightWords(run.plan.night)}
      answer={<RunAnswer run={run} front={front} running={running} reading={reading} />}
      dock={
        <Dock>
          {!stopped && !done && run.is !== 'overnight' && front && (
            <BigAct
              label={actLabel(front.step)}
              sub={actSub(front, run, running)}
              state={running.act.busy ? 'busy' : 'ready'}
              onAct={() => void running.tick(front.step, `${running.nameOf(front.step)}.`)}
            />
          )}
          <UndoBar
            until={running.undo.until}
            now={running.undo.now}
            says={running.says}
            undo="Undo"
            onUndo={() => void running.takeBack()}
          />
          {!stopped && !done && (
            <Button
              kind="quiet"
              waiting={running.act.busy}
              onAct={() => void running.stop('fishBreathingHard', everythingOn)}
            >
              Fish breathing hard
            </Button>
          )}
        </Dock>
      }
    >
      <WholeForm act={running.act} />
      {stopped && <Stopped run={run} running={running} />}
      {run.is === 'overnight' && (
        <p>The pumps run. Leave the lid ajar for air; a first small dose of food may follow.</p>
      )}
      {!stopped && run.is !== 'overnight' && told?.note && <p className="run-note">{told.note}</p>}
      {!stopped && does?.does === 'waterOut' && front && <WaterKeys run={run} running={running} step={front.step} />}
      {!stopped && does?.does === 'pour' && does.place && <PourKeys run={run} running={running} place={does.place} />}
      {!stopped && run.pumps && <Pumps run={run} reading={reading} />}
      {awake && <Awake />}
      {ahead && <RunAlarms run={run} tank={tank} reading={reading} />}
      <RunSteps run={run} running={running} reading={reading} />
      {(wet || run.run.water.length > 0 || !stopped) && <Tally run={run} running={running} water={tank.water} />}
      {wet && <AfterPour run={run} tank={tank} reading={reading} />}
      {planMayChange(run) && (
        <p>
          <a href={`#/seeding/${tank.tank}/plan/run/${run.run.id}`}>Change the plan</a>
        </p>
      )}
      {ahead && <CallOff running={running} />}
      <p>
        <a href={`#/seeding/${tank.tank}`}>Live bottles for {tank.name}</a>
      </p>
    </Page>
  )
}

/** Asked for while it stands on the page, and silent once it is granted. */
const Awake = () => {
  const screen = useScreenLock()
  return screen.lock === 'awake' ? null : <KeepAwake {...screen} />
}

const actLabel = (step: string): string => {
  const does = readStep(step)?.does
  return does === 'pour' ? 'Poured' : does === 'dark' ? 'It is dark' : 'Done'
}
const actSub = ({ step }: RunStep, { plan, run }: RunNow, { nameOf }: Running): string => {
  const read = readStep(step)
  const rest = read?.does === 'pour' && read.place ? toPourAt(read.place, plan, run) : undefined
  return rest ? `${poursWords([rest])}, ${millilitres(rest.amount + rest.rinse)} in all` : nameOf(step)
}
