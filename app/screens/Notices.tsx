/** Quiet bars above every page: they push it down and cover nothing. */
import './notices.css'
import { type ReactNode, useState } from 'react'
import { Actions, Button, LinkButton } from '../parts/Actions.tsx'
import { Notice } from '../parts/Notice.tsx'
import { flushAndReload } from '../state/leave.ts'
import { useStatus } from '../state/store.ts'
import { useOfflineReady, useUpdate } from '../state/updates.ts'
import { troubleText } from '../words/phone.ts'

// Always there, empty or not: a live region that arrives together with its words is often not read out.
export const Notices = ({ children }: { readonly children?: ReactNode }) => (
  <div className="notices" aria-live="polite">
    {children}
    <Trouble />
    <NewVersion />
    <OfflineReady />
  </div>
)

const Trouble = () => {
  const text = troubleText(useStatus())
  return (
    text && (
      <Notice kind="caution">
        <p>{text}</p>
        <Actions>
          <Button onAct={() => void flushAndReload()}>Reload</Button>
        </Actions>
      </Notice>
    )
  )
}

const NewVersion = () => {
  const { waiting, take } = useUpdate()
  const [later, setLater] = useState(false)
  return (
    waiting &&
    !later && (
      <Notice>
        <p>A new version is ready. Your drafts are kept.</p>
        <Actions>
          <Button kind="quiet" onAct={take}>
            Take it
          </Button>
          <Button kind="quiet" onAct={() => setLater(true)}>
            Later
          </Button>
        </Actions>
      </Notice>
    )
  )
}

const OfflineReady = () => {
  const { offlineReady, dismiss } = useOfflineReady()
  return (
    offlineReady && (
      <div className="notices-passing">
        <p>From now on it opens without a network.</p>
        <LinkButton onAct={dismiss}>Good</LinkButton>
      </div>
    )
  )
}
