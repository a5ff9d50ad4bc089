/** What tabs tell each other. */
import { channelOf, type TabMessage } from '../storage/messages.ts'
import { household } from './household.ts'

const listeners = new Set<(message: TabMessage) => void>()
const open = (name: string): BroadcastChannel => {
  const channel = new BroadcastChannel(channelOf(name))
  channel.onmessage = ({ data }: MessageEvent<TabMessage>) => {
    for (const listen of listeners) listen(data)
  }
  return channel
}
let channel = open(household.ledger)

/** Another ledger, other tabs. */
export const joinTabs = (name: string) => {
  channel.close()
  channel = open(name)
}
export const onMessage = (listen: (message: TabMessage) => void) => {
  listeners.add(listen)
}
/** Nobody in this tab hears it. */
export const tellTabs = (message: TabMessage) => channel.postMessage(message)
