/** On every screen: pumps that are off past their hour, and what a night that was stopped left off. On Tonight: the way to the night that is on. */
import './runBar.css'
import { openRuns, stillOff, tankAt } from '../../../core/index.ts'
import { Notice } from '../../parts/Notice.tsx'
import { leftOffWords, pumpsOffWords, runLineWords } from '../../words/seeding.ts'
import { useReading } from '../useReading.ts'

export const RunBar = ({ path }: { readonly path: string }) => {
  const { world, now } = useReading()
  return openRuns(world, now).map((run) => {
    const { id } = run.run
    const href = `/seeding/run/${id}`
    const tank = tankAt(world, run.plan.tank, now)
    if (!tank || path === href) return null
    if (run.pumps && now >= run.pumps.backBy)
      return (
        <Notice key={id} kind="caution">
          <p>
            <a className="run-bar" href={`#${href}`}>
              {pumpsOffWords(tank.name, run.pumps.late)}
            </a>
          </p>
        </Notice>
      )
    if (run.is === 'stopped')
      return (
        <Notice key={id} kind="caution">
          <p>
            <a className="run-bar" href={`#${href}`}>
              {leftOffWords(tank.name, stillOff(run).length)}
            </a>
          </p>
        </Notice>
      )
    return path === '/' || path.startsWith('/tank/') ? (
      <p key={id}>
        <a className="run-bar" href={`#${href}`}>
          {runLineWords(tank.name, run, tank.zone)}
        </a>
      </p>
    ) : null
  })
}
