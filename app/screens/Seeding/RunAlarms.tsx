/** The phone’s own alarm rings whatever happens to this app: asked for before the pumps go off, or taken as a calendar file. */
import { useEffect, useState } from 'react'
import { pumpsBackAt, type RunNow } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Section } from '../../parts/Section.tsx'
import { now as nowIs } from '../../state/clock.ts'
import { handOver } from '../../state/handOver.ts'
import { loadPart } from '../../state/leave.ts'
import { clock } from '../../words/dates.ts'
import { morningAlarmWords, pumpsAlarmWords } from '../../words/seeding.ts'
import type { OfTank } from './ofTank.ts'

export const RunAlarms = ({ run, tank, reading }: OfTank & { readonly run: RunNow }) => {
  const { zone } = reading
  const back = pumpsBackAt(run)
  const { morning } = run.plan
  const { id } = run.run
  const [file, setFile] = useState<File>()
  const [taken, setTaken] = useState(false)
  // Made before it is asked for: a phone forgets a touch within seconds.
  useEffect(() => {
    let left = false
    void loadPart(() => import('../../reminders/calendarFile.ts')).then(({ alarmsFile }) => {
      const alarms = [
        ...(back === undefined ? [] : [{ key: `pumps-${id}`, at: back, summary: pumpsAlarmWords(tank.name) }]),
        { key: `morning-${id}`, at: morning, summary: morningAlarmWords(tank.name) },
      ]
      const text = alarmsFile(alarms, nowIs())
      if (!left) setFile(new File([text], 'smallhours-night.ics', { type: 'text/calendar;charset=utf-8' }))
    })
    return () => {
      left = true
    }
  }, [back, morning, id, tank.name])
  return (
    <Section title="An alarm that rings by itself">
      <p>
        {back === undefined
          ? `Set this phone’s own alarm for the morning, ${clock(morning, zone)}.`
          : `Set this phone’s own alarm for ${clock(back, zone)}, the pumps back on, and one for ${clock(morning, zone)}, the rest. A closed app rings nothing.`}
      </p>
      <Actions>
        <Button
          kind="quiet"
          waiting={file === undefined}
          onAct={async () => setTaken(file !== undefined && (await handOver(file)) !== undefined)}
        >
          Or take both as a calendar file
        </Button>
        <output>{taken ? 'Open the file to put them into your calendar.' : ''}</output>
      </Actions>
    </Section>
  )
}
