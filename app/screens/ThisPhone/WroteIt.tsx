/** After a restore: was it this phone that wrote the book? Then it goes on under its name, and its old entries are its own. */
import { useState } from 'react'
import { type DeviceId, namePhone, ok, phoneName } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { matter, setMatter, thisDevice, useMatter } from '../../state/device.ts'
import { request } from '../../state/store.ts'
import { wroteItLabel, wroteItText } from '../../words/phone.ts'
import { type AnyRefusal, refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'

export const WroteIt = ({ reading }: { readonly reading: Reading }) => {
  const writer = useMatter('restoredFrom')
  const [busy, setBusy] = useState(false)
  const [refusal, setRefusal] = useState<AnyRefusal>()
  if (!writer) return null
  const { world, now } = reading
  const name = phoneName(world, writer, now)
  const goOn = async () => {
    setBusy(true)
    const done = await goOnAs(writer, name, reading)
    setRefusal(done.ok ? undefined : done.refusal)
    setBusy(false)
  }
  return (
    <Notice>
      <p>{wroteItText(name)}</p>
      {refusal && <p role="alert">{refusalText(refusal, reading)}</p>}
      <Actions>
        <Button kind="quiet" waiting={busy} onAct={() => void goOn()}>
          {wroteItLabel(name)}
        </Button>
        <Button kind="quiet" waiting={busy} onAct={() => void setMatter('restoredFrom', null)}>
          It was another phone
        </Button>
      </Actions>
    </Notice>
  )
}

/** A phone that was restored before has entries under several ids, all by one name. */
const goOnAs = async (writer: DeviceId, name: string | undefined, { world, now }: Reading) => {
  if (name !== undefined) {
    const device = await thisDevice()
    if (!device.ok) return device
    const named = await request((_world, asked) => namePhone({ device: device.value, name }, asked.now))
    if (!named.ok) return named
  }
  const namesakes = [...world.phones.keys()].filter(
    (device) => device !== matter('device') && name !== undefined && phoneName(world, device, now) === name,
  )
  const kept = await setMatter('formerly', [...new Set([...(matter('formerly') ?? []), writer, ...namesakes])])
  if (!kept.ok) return kept
  await setMatter('restoredFrom', null)
  return ok(undefined)
}
