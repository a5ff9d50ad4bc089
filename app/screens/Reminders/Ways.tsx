/** Way by way: what the browser says of it at this moment, what it can be relied on for, how it is mended, and a trial. */
import { useState } from 'react'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Facts } from '../../parts/Facts.tsx'
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

const fact = ({ name, state, promise, mend }: ChannelWords) => ({
  term: name,
  fact: state,
  note: mend ? `${promise} ${mend}` : promise,
})

export const Ways = ({ channels, reading, onTried }: WaysProps) => {
  const [said, setSaid] = useState('')
  const { standing, probes } = channels
  return (
    <>
      <Facts
        facts={[
          nudgeChannel(channels),
          calendarChannel(channels, reading),
          wakeChannel(channels),
          badgeChannel(channels),
          homeScreenChannel(channels),
        ].map(fact)}
      />
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
