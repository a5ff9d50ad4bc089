/** What is next, large, with its hour; and while the pumps are off, when they must be back. */
import { pumpsPlannedBack, type RunNow, type RunStep, wallDay } from '../../../core/index.ts'
import { clock, weekday } from '../../words/dates.ts'
import { everythingOn, lateWords } from '../../words/seeding.ts'
import { stepTold } from '../../words/stepTold.ts'
import type { Reading } from '../useReading.ts'
import type { Running } from './useRun.ts'

export const RunAnswer = ({
  run,
  front,
  running,
  reading,
}: {
  readonly run: RunNow
  readonly front: RunStep | undefined
  readonly running: Running
  readonly reading: Reading
}) => {
  if (run.is === 'stopped') return run.run.stopped?.because === 'calledOff' ? 'Called off.' : everythingOn
  if (!front) return 'All is back on. The night is done.'
  const late = run.pumps && run.pumps.late > 0 && front.at === run.pumps.backBy ? run.pumps.late : front.late
  const { zone, today } = reading
  const day = wallDay(front.at, zone)
  const loud = front.at === run.pumps?.backBy && reading.now >= front.at
  return (
    <span className="run-next">
      <span className="run-clock">{clock(front.at, zone)}</span>{' '}
      {day !== today && <span className="run-day">{weekday(day)}. </span>}
      {loud && late > 0 && <strong className="run-late">{lateWords(late)}. </strong>}
      <span>{sentence(stepTold(front.step, running.which).say)}</span>
    </span>
  )
}

export const Pumps = ({ run, reading: { zone, now } }: { readonly run: RunNow; readonly reading: Reading }) => {
  const { pumps } = run
  if (!pumps || now >= pumps.backBy) return null
  const back = clock(pumps.backBy, zone)
  const planned = pumpsPlannedBack(run)
  const rings = planned === undefined ? back : clock(planned, zone)
  return (
    <p>
      Pumps off since {clock(pumps.off, zone)}. Back on by <strong>{back}</strong>; sooner is always allowed.
      {rings !== back && ` The alarm was for ${rings}: set it to ${back}.`}
    </p>
  )
}

const sentence = (say: string): string => (say.endsWith('?') ? say : `${say}.`)
