/**
 * A stand-in for the desktop's notification service, on a message bus of its own: what would be on the glass, and a touch
 * on it that the browser takes for a person's. After the Desktop Notifications Specification 1.2 of freedesktop.org.
 */
import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { sessionBus } from '@homebridge/dbus-native'

export type Rung = {
  readonly id: number
  readonly title: string
  readonly body: string
  /** Label by the name it is touched under. */
  readonly buttons: ReadonlyMap<string, string>
}
export type Bell = {
  /** For the browser's surroundings. */
  readonly address: string
  /** Everything shown so far, taken away or not. */
  readonly rung: readonly Rung[]
  readonly takenAway: readonly number[]
  readonly touch: (rung: Rung, button: string) => void
  readonly touchBody: (rung: Rung) => void
  readonly stop: () => Promise<void>
}

const path = '/org/freedesktop/Notifications'
const face = 'org.freedesktop.Notifications'
/** How long the browser may take to hear the answer, on a busy machine: a touch before that is one nobody can make. */
const hearing = 1_000

export const hangBell = async (): Promise<Bell> => {
  const daemon = spawn('dbus-daemon', ['--session', '--nofork', '--print-address'], {
    stdio: ['ignore', 'pipe', 'ignore'],
  })
  const [first] = await once(daemon.stdout, 'data')
  const address = String(first).trim()
  const bus = sessionBus({ busAddress: address })
  const rung: Rung[] = []
  const takenAway: number[] = []
  const closed = (id: number, why: number) => bus.sendSignal(path, face, 'NotificationClosed', 'uu', [id, why])
  const invoke = (id: number, action: string) => bus.sendSignal(path, face, 'ActionInvoked', 'us', [id, action])
  let last = 0
  const answer = (method: string, signature: string, how: (...given: never[]) => unknown) =>
    bus.setMethodCallHandler(path, face, method, [how, signature])
  answer('GetCapabilities', 'as', () => ['actions', 'body', 'persistence'])
  answer('GetServerInformation', 'ssss', () => ['bell', 'tests', '1', '1.2'])
  answer(
    'Notify',
    'u',
    (_app: string, replaces: number, _icon: string, title: string, body: string, actions: string[]) => {
      const id = replaces || ++last
      const buttons = new Map<string, string>()
      for (let i = 0; i + 1 < actions.length; i += 2) buttons.set(actions[i + 1] ?? '', actions[i] ?? '')
      setTimeout(() => rung.push({ id, title, body, buttons }), hearing)
      return id
    },
  )
  answer('CloseNotification', '', (id: number) => {
    takenAway.push(id)
    closed(id, 3)
  })
  await new Promise<void>((resolve, reject) =>
    bus.requestName(face, 0, (error) => (error ? reject(new Error(JSON.stringify(error))) : resolve())),
  )
  return {
    address,
    rung,
    takenAway,
    touch: ({ id, buttons }, label) => {
      const action = buttons.get(label)
      if (action === undefined) throw new Error(`There is no ${label} on it, only ${[...buttons.keys()].join(', ')}`)
      invoke(id, action)
    },
    touchBody: ({ id }) => invoke(id, 'default'),
    stop: async () => {
      bus.connection.end()
      daemon.kill()
      await once(daemon, 'exit')
    },
  }
}
