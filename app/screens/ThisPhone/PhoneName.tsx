/** What this phone is called, for the other phones: one touch for a usual name, or her own. */
import { useState } from 'react'
import { type NoteRefusal, namePhone, phoneName } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Chips } from '../../parts/Chips.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { thisDevice } from '../../state/device.ts'
import { useDraft } from '../../state/useDraft.ts'
import { fromStorage, useRequest } from '../../state/useRequest.ts'
import type { StorageRefusal } from '../../storage/connection.ts'
import { calledText, phoneNameOptions, sameNameText } from '../../words/phone.ts'
import { refusalText } from '../../words/refusals.ts'
import { usePhones } from '../usePhones.ts'
import type { Reading } from '../useReading.ts'

export const PhoneName = ({ reading }: { readonly reading: Reading }) => {
  const { world, now } = reading
  const { mine } = usePhones(reading)
  const [device] = mine
  const name = device && phoneName(world, device, now)
  return (
    <>
      <p role="status">{calledText(name)}</p>
      {name === undefined ? (
        <Naming reading={reading} />
      ) : (
        <MoreExact label="Call it something else">
          <Naming reading={reading} />
        </MoreExact>
      )}
    </>
  )
}

const Naming = ({ reading }: { readonly reading: Reading }) => {
  const { world, now } = reading
  const { mine } = usePhones(reading)
  const { fields, change, clear } = useDraft('phoneName', { name: '' })
  const { busy, refusal, send, reset } = useRequest<NoteRefusal>()
  const [trouble, setTrouble] = useState<StorageRefusal>()
  const type = (name: string) => {
    change({ name })
    reset()
  }
  const call = async () => {
    const device = await thisDevice()
    setTrouble(device.ok ? undefined : device.refusal)
    if (!device.ok) return
    const done = await send((_world, asked) => namePhone({ device: device.value, name: fields.name }, asked.now))
    if (done) await clear()
  }
  const taken = [...world.phones.keys()].some(
    (other) => !mine.includes(other) && phoneName(world, other, now) === fields.name.trim(),
  )
  const stored = trouble ?? (refusal && fromStorage(refusal) ? refusal : undefined)
  return (
    <Form onSend={call}>
      <Chips
        label="One of these"
        options={phoneNameOptions}
        value={fields.name}
        onChange={(chosen) => type(chosen ?? '')}
      />
      <Field
        label="Or in your own words"
        value={fields.name}
        onChange={type}
        hint={taken ? sameNameText : undefined}
        error={refusal && !fromStorage(refusal) ? refusalText(refusal, reading) : undefined}
      />
      {stored && <Notice kind="refusal">{refusalText(stored, reading)}</Notice>}
      <Actions>
        <Button kind="quiet" submit waiting={busy}>
          Call it so
        </Button>
      </Actions>
    </Form>
  )
}
