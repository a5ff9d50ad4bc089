/** On every screen: pumps that are off past their hour, and what a night that was stopped left off. On Tonight: the way to the night that is on. */
import './runBar.css'
import { openRuns, tankAt } from '../../../core/index.ts'
import { Notice } from '../../parts/Notice.tsx'
import { pumpsOffWords, runLineWords } from '../../words/seeding.ts'
import { useReading } from '../useReading.ts'

export const RunBar = ({ path }: { readonly path: string }) => {
  const { world, now } = useReading()
  return openRuns(world, now).map((run) => {
    const { id } = run.run
    const href = `/seeding/run/${id}`
    const tank = tankAt(world, run.plan.tank, now)
    if (!tank || path === href) return null
    const late = run.pumps && now >= run.pumps.backBy ? run.pumps.late : undefined
    const line = (
      <p key={id}>
        <a className="run-bar" href={`#${href}`}>
          {late === undefined ? runLineWords(tank.name, run, tank.zone) : pumpsOffWords(tank.name, late)}
        </a>
      </p>
    )
    if (late !== undefined || run.is === 'stopped')
      return (
        <Notice key={id} kind="caution">
          {line}
        </Notice>
      )
    return path === '/' || path.startsWith('/tank/') ? line : null
  })
}
