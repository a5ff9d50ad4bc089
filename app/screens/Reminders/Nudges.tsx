/** Whether she is nudged, and what this browser makes of that. Its leave is asked for in her own touch, and never before. */
import { useState } from 'react'
import { nextNudge } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { wishesOf } from '../../reminders/asked.ts'
import { setMatter, useMatter } from '../../state/device.ts'
import { askForNudges, nudgeStanding, tryNudge } from '../../state/nudging.ts'
import { phoneZone } from '../../state/phoneZone.ts'
import { askForWakes } from '../../state/probes.ts'
import type { StorageRefusal } from '../../storage/connection.ts'
import { nextNudgeText, nudgeChoices, standingText, trialWords, triedText } from '../../words/nudges.ts'
import { refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'

const none: ReadonlySet<string> = new Set()

type NudgesProps = { readonly reading: Reading; readonly onChanged?: () => void }

export const Nudges = ({ reading, onChanged }: NudgesProps) => {
  const { world, now } = reading
  const wish = useMatter('nudge')
  const wishes = wishesOf(useMatter('wishes'), phoneZone())
  const [refusal, setRefusal] = useState<StorageRefusal>()
  const [tried, setTried] = useState<boolean>()
  // The browser's leave is no state of ours: a render follows each answer, each minute and each return to the app.
  const [, setAnswered] = useState(0)
  const standing = nudgeStanding(wish)
  const trouble = standingText(standing)
  const choose = async (chosen: 'off' | 'on') => {
    const kept = chosen === 'on' ? await askForNudges() : await setMatter('nudge', false)
    setRefusal(kept.ok ? undefined : kept.refusal)
    setTried(undefined)
    setAnswered((times) => times + 1)
    await askForWakes(chosen === 'on' && kept.ok)
    onChanged?.()
  }
  return (
    <>
      {standing !== 'unsupported' && (
        <Choice
          label="Nudge me after lights-out"
          options={nudgeChoices}
          value={standing === 'on' ? 'on' : 'off'}
          error={refusal && refusalText(refusal, reading)}
          onChange={choose}
        />
      )}
      <p role="status">
        {trouble ?? (standing === 'on' && nextNudgeText(nextNudge(world, now, { shown: none, wishes }), world, now))}
      </p>
      {standing === 'on' && (
        <Actions>
          <Button kind="quiet" onAct={async () => setTried(await tryNudge(trialWords))}>
            Try it now
          </Button>
          <output>{tried !== undefined && triedText(tried)}</output>
        </Actions>
      )}
    </>
  )
}
