/** The night was stopped: what to switch on, without a search. What was poured and taken out stays on the tally. */
import { type RunNow, stillOff } from '../../../core/index.ts'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Section } from '../../parts/Section.tsx'
import { capital } from '../../words/numbers.ts'
import { deviceName } from '../../words/steps.ts'

export const Stopped = ({ run }: { readonly run: RunNow }) => {
  const off = stillOff(run)
  const fish = run.run.stopped?.because === 'fishBreathingHard'
  return (
    <Section title={off.length > 0 ? 'Switch on now' : 'Nothing is ticked as off'}>
      {off.length > 0 && (
        <Lines>
          {off.map((key) => (
            <Line key={key}>{capital(deviceName(key))}</Line>
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
