/** The night was stopped: what to switch on, without a search. What was poured and taken out stays on the tally. */
import { type RunNow, stepBack, stillOff } from '../../../core/index.ts'
import { LinkButton } from '../../parts/Actions.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { capital } from '../../words/numbers.ts'
import { deviceName } from '../../words/steps.ts'
import type { Running } from './useRun.ts'

export const Stopped = ({ run, running }: { readonly run: RunNow; readonly running: Running }) => {
  const off = stillOff(run)
  const fish = run.run.stopped?.because === 'fishBreathingHard'
  if (off.length === 0 && !fish) return null
  return (
    <Section title={off.length > 0 ? 'Switch on now' : 'Nothing is ticked as off'}>
      {off.length > 0 && (
        <Lines>
          {off.map((key) => (
            <Line
              key={key}
              end={
                <LinkButton
                  onAct={() => void running.tick(stepBack(key, run), `${running.nameOf(stepBack(key, run))}.`)}
                >
                  Done<span className="for-ears">: {running.nameOf(stepBack(key, run))}</span>
                </LinkButton>
              }
            >
              {capital(deviceName(key, running.which))}
            </Line>
          ))}
        </Lines>
      )}
      {fish && (
        <p>
          Take the lid off, point a wave pump at the surface or hang in an air stone, and stay until they breathe
          calmly. Dry hands at every switch.
        </p>
      )}
    </Section>
  )
}
