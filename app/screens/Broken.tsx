/** What stands in place of a page that failed: never a white one, and always a way to carry the book out. */
import { Component, type ReactNode } from 'react'
import { wallDay } from '../../core/index.ts'
import { Actions, Button } from '../parts/Actions.tsx'
import { MoreExact } from '../parts/MoreExact.tsx'
import { Page } from '../parts/Page.tsx'
import { now } from '../state/clock.ts'
import { lookingRound } from '../state/household.ts'
import { flushAndReload } from '../state/leave.ts'
import { phoneZone } from '../state/phoneZone.ts'
import { SaveBackup } from './ThisPhone/SaveBackup.tsx'

type BrokenProps = { readonly children: ReactNode }
type BrokenState = { readonly failed: boolean; readonly message: string }

export class Broken extends Component<BrokenProps, BrokenState> {
  override state: BrokenState = { failed: false, message: '' }

  static getDerivedStateFromError = (error: unknown): BrokenState => ({
    failed: true,
    message: error instanceof Error ? `${error.name}: ${error.message}` : String(error),
  })

  // One room that fails must not close the others.
  private readonly tryAgain = () => this.setState({ failed: false, message: '' })
  override componentDidMount() {
    window.addEventListener('hashchange', this.tryAgain)
  }
  override componentWillUnmount() {
    window.removeEventListener('hashchange', this.tryAgain)
  }

  override render() {
    return this.state.failed ? <BrokenPage message={this.state.message} /> : this.props.children
  }
}

// It asks nothing of the book: the book may be what this page could not be drawn from.
const BrokenPage = ({ message }: { readonly message: string }) => {
  const zone = phoneZone()
  return (
    <Page
      title="Something went wrong"
      answer="This page could not be drawn. What you have noted is still on this phone."
    >
      <p>Reloading often helps.{!lookingRound && ' If it does not, save a backup first.'}</p>
      <Actions>
        <Button kind="quiet" onAct={() => void flushAndReload()}>
          Reload
        </Button>
      </Actions>
      {!lookingRound && <SaveBackup reading={{ zone, today: wallDay(now(), zone) }} />}
      <MoreExact label="What the phone says">
        <p>{message}</p>
      </MoreExact>
    </Page>
  )
}
