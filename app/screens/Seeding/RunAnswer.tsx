/** What is next, large, with its hour; and while the pumps are off, when they must be back. */
import { type RunNow, type RunStep, wallDay } from '../../../core/index.ts'
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

export const Pumps = ({
  run: { pumps },
  reading: { zone, now },
}: {
  readonly run: RunNow
  readonly reading: Reading
}) =>
  pumps && now < pumps.backBy ? (
    <p>
      Pumps off since {clock(pumps.off, zone)}. Back on by <strong>{clock(pumps.backBy, zone)}</strong>; sooner is
      always allowed.
    </p>
  ) : null

const sentence = (say: string): string => (say.endsWith('?') ? say : `${say}.`)
