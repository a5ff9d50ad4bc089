/** Her own hours. Each touch holds at once: there is nothing to save, and nothing to lose. */
import { useState } from 'react'
import { isClockTime, type Wishes } from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { wishesOf } from '../../reminders/asked.ts'
import { setMatter, useMatter } from '../../state/device.ts'
import { phoneZone } from '../../state/phoneZone.ts'
import type { StorageRefusal } from '../../storage/connection.ts'
import { staleCalendarWords } from '../../words/channels.ts'
import { quietChoices, shakeChoices, splitChoices, usualHours, whenChoices } from '../../words/nudges.ts'
import { refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'

export const WishFields = ({ reading }: { readonly reading: Reading }) => {
  const kept = useMatter('wishes')
  const calendar = useMatter('calendar')
  const [refusal, setRefusal] = useState<StorageRefusal>()
  const [changed, setChanged] = useState(false)
  const { zone, ...wishes } = wishesOf(kept, phoneZone())
  const keep = async (next: Omit<Wishes, 'zone'>) => {
    const done = await setMatter('wishes', next)
    setRefusal(done.ok ? undefined : done.refusal)
    setChanged(true)
  }
  const { quiet, shakeAt, ...rest } = wishes
  /** An hour half typed is none yet: the one before it holds. */
  const hour = (text: string, then: (time: typeof wishes.bed) => void) => {
    if (isClockTime(text)) then(text)
  }
  const error = refusal && refusalText(refusal, reading)
  return (
    <>
      <Choice
        label="On a dose night"
        options={whenChoices}
        value={wishes.when}
        error={error}
        onChange={(when) => void keep({ ...wishes, when })}
      />
      {wishes.when === 'beforeBed' && (
        <ClockField
          label="I go to bed at"
          value={wishes.bed}
          onChange={(text) => hour(text, (bed) => void keep({ ...wishes, bed }))}
        />
      )}
      <Choice
        label="Quiet hours"
        options={quietChoices}
        value={quiet ? 'some' : 'none'}
        onChange={(chosen) =>
          void keep(
            chosen === 'some' ? { ...wishes, quiet: usualHours.quiet } : { ...rest, ...(shakeAt ? { shakeAt } : {}) },
          )
        }
      />
      {quiet && (
        <>
          <ClockField
            label="Quiet from"
            value={quiet.from}
            onChange={(text) => hour(text, (from) => void keep({ ...wishes, quiet: { ...quiet, from } }))}
          />
          <ClockField
            label="Quiet until"
            value={quiet.until}
            onChange={(text) => hour(text, (until) => void keep({ ...wishes, quiet: { ...quiet, until } }))}
          />
        </>
      )}
      <Choice
        label="Shaking the bottles"
        options={shakeChoices}
        value={shakeAt ? 'at' : 'no'}
        onChange={(chosen) =>
          void keep(
            chosen === 'at' ? { ...wishes, shakeAt: usualHours.shake } : { ...rest, ...(quiet ? { quiet } : {}) },
          )
        }
      />
      {shakeAt && (
        <ClockField
          label="Shake at"
          value={shakeAt}
          onChange={(text) => hour(text, (time) => void keep({ ...wishes, shakeAt: time }))}
        />
      )}
      <Choice
        label="Several tanks in one evening"
        options={splitChoices}
        value={wishes.split ? 'apart' : 'together'}
        onChange={(chosen) => void keep({ ...wishes, split: chosen === 'apart' })}
      />
      <p role="status">{changed && calendar && calendar.events.length > 0 ? staleCalendarWords : ''}</p>
    </>
  )
}
