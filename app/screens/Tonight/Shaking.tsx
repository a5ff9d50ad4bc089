/** The bottles in the fridge, one touch for all that want a shake. */
import { longUnshakenHours, ok, shakeBottles, shakes } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Section } from '../../parts/Section.tsx'
import { useRequest } from '../../state/useRequest.ts'
import { refusalText } from '../../words/refusals.ts'
import { shakeWords } from '../../words/tonight.ts'
import { useReading } from '../useReading.ts'

export const Shaking = () => {
  const { world, now, today, zone } = useReading()
  const { busy, refusal, send } = useRequest<never>()
  const all = shakes(world, now)
  const wanted = all.filter(({ shaken }) => !shaken)
  if (all.length === 0) return null
  const bottles = wanted.map(({ bottle }) => bottle.id)
  return (
    <Section title="Shake">
      {all.map((shake) => (
        <p key={shake.bottle.id}>{shakeWords(shake, longUnshakenHours, world, now)}</p>
      ))}
      {refusal && <Notice kind="refusal">{refusalText(refusal, { today, zone })}</Notice>}
      {wanted.length > 0 && (
        <Actions>
          <Button kind="quiet" waiting={busy} onAct={() => void send((_, at) => ok(shakeBottles(bottles, at.now)))}>
            Shaken
          </Button>
        </Actions>
      )}
    </Section>
  )
}
