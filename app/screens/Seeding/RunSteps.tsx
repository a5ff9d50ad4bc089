/** The steps to come and those done, each with its hour; one left out can be ticked late, one ticked in error taken back. */
import { hoursOff, type RunNow, type RunStep, readStep, wallDay } from '../../../core/index.ts'
import { LinkButton } from '../../parts/Actions.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Section } from '../../parts/Section.tsx'
import { plural } from '../../words/numbers.ts'
import { clockAt, hoursOffWords, lateWords } from '../../words/seeding.ts'
import type { Reading } from '../useReading.ts'
import type { Running } from './useRun.ts'

type RunStepsProps = { readonly run: RunNow; readonly running: Running; readonly reading: Reading }

export const RunSteps = ({ run, running, reading }: RunStepsProps) => {
  const { zone, now } = reading
  const open = run.steps.filter(({ done }) => done === undefined)
  const done = run.steps.filter((step) => step.done !== undefined)
  const hour = (at: RunStep['at']) => clockAt(at, reading, wallDay(at, zone))
  const off = ({ step }: RunStep): string | undefined => {
    const read = readStep(step)
    const hours =
      read?.key !== undefined && (read.does === 'on' || read.does === 'in')
        ? hoursOff(run.run, read.key, now)
        : undefined
    return hours === undefined ? undefined : hoursOffWords(hours)
  }
  return (
    <>
      {open.length > 0 && run.is !== 'stopped' && (
        <Section title="To come">
          <Lines>
            {open.map((step) => (
              <Line
                key={step.step}
                lead={hour(step.at)}
                end={
                  <LinkButton onAct={() => void running.tick(step.step, `${running.nameOf(step.step)}.`)}>
                    Done<span className="for-ears">: {running.nameOf(step.step)}</span>
                  </LinkButton>
                }
                below={
                  [off(step), step.late > 0 ? lateWords(step.late) : undefined].filter(Boolean).join(', ') || undefined
                }
              >
                {running.nameOf(step.step)}
              </Line>
            ))}
          </Lines>
        </Section>
      )}
      {done.length > 0 && (
        <MoreExact label={`${plural(done.length, 'step', 'steps')} done`}>
          <Lines>
            {done.map((step) => {
              const entry = run.run.done.get(step.step)?.entry
              return (
                <Line
                  key={step.step}
                  lead={step.done === undefined ? undefined : hour(step.done)}
                  end={
                    entry && (
                      <LinkButton onAct={() => running.untick(entry)}>
                        Not done<span className="for-ears">: {running.nameOf(step.step)}</span>
                      </LinkButton>
                    )
                  }
                >
                  {running.nameOf(step.step)}
                </Line>
              )
            })}
          </Lines>
        </MoreExact>
      )}
    </>
  )
}
