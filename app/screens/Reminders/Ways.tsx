/** Way by way: what the browser says of it at this moment, what it can be relied on for, how it is mended, and a trial. */
import './reminders.css'
import { useState } from 'react'
import { Actions, Button } from '../../parts/Actions.tsx'
import { tryBadge } from '../../state/badgeTrial.ts'
import { wakeWorker } from '../../state/nudging.ts'
import {
  badgeChannel,
  badgeTried,
  type Channels,
  type ChannelWords,
  calendarChannel,
  homeScreenChannel,
  nudgeChannel,
  wakeChannel,
  wakeTried,
} from '../../words/channels.ts'
import type { Reading } from '../useReading.ts'

type WaysProps = { readonly channels: Channels; readonly reading: Reading; readonly onTried: () => void }

const Way = ({ name, state, promise, mend }: ChannelWords) => (
  <div className="way">
    <dt>{name}</dt>
    <dd className="way-state">{state}</dd>
    <dd>{promise}</dd>
    {mend && <dd>{mend}</dd>}
  </div>
)

export const Ways = ({ channels, reading, onTried }: WaysProps) => {
  const [said, setSaid] = useState('')
  const { standing, probes } = channels
  return (
    <>
      <dl className="ways">
        <Way {...nudgeChannel(channels)} />
        <Way {...calendarChannel(channels, reading)} />
        <Way {...wakeChannel(channels)} />
        <Way {...badgeChannel(channels)} />
        <Way {...homeScreenChannel(channels)} />
      </dl>
      <Actions>
        {standing === 'on' && (
          <Button
            kind="quiet"
            onAct={async () => {
              await wakeWorker()
              setSaid(wakeTried)
              onTried()
            }}
          >
            Wake it as the browser would
          </Button>
        )}
        {probes.badge && (
          <Button
            kind="quiet"
            onAct={() => {
              void tryBadge()
              setSaid(badgeTried)
            }}
          >
            Try the number
          </Button>
        )}
        <output>{said}</output>
      </Actions>
    </>
  )
}
