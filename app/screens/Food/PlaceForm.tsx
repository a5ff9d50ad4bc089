/** A door, new or called something else. */
import { useLocation } from 'wouter'
import { type Door, describePlace, ok, type PlaceDescribed, type PlaceId } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { newId } from '../../state/ids.ts'
import { useDraft } from '../../state/useDraft.ts'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { NotNow } from './NotNow.tsx'
import { Refused } from './Refused.tsx'
import { readName } from './readName.ts'
import { useAct } from './useAct.ts'

type Fields = { readonly place: PlaceId; readonly name: string; readonly door: Door }

export const PlaceForm = ({ place }: { readonly place?: PlaceDescribed }) => {
  const reading = useReading()
  const [, go] = useLocation()
  const act = useAct()
  const known: Fields | undefined = place && { place: place.place, name: place.name, door: place.door }
  const {
    fields,
    change: type,
    clear,
    restoredFrom,
  } = useDraft<Fields>(
    `place/${place?.place ?? 'new'}`,
    known ?? { place: newId<PlaceId>(), name: '', door: 'freezer' },
  )
  const change = (changed: Partial<Fields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    const saved = await act.send((_, { now }) => {
      const name = readName(fields.name, 'name')
      return name.ok ? ok(describePlace({ ...fields, name: name.value }, now)) : name
    })
    if (!saved) return
    await clear()
    go('/food')
  }
  return (
    <Form onSend={save}>
      <Unfinished {...reading} since={restoredFrom} onFresh={clear} />
      {!place && (
        <Choice
          label="What is it?"
          options={[
            { value: 'freezer', label: 'A freezer' },
            { value: 'fridge', label: 'A fridge' },
          ]}
          value={fields.door}
          onChange={(door) => change({ door })}
        />
      )}
      <Field
        label="What do you call it?"
        hint="As you say it in the house: boathouse freezer."
        value={fields.name}
        onChange={(name) => change({ name })}
        error={act.wrong('name')}
      />
      <Refused act={act} />
      <Actions>
        <Button submit waiting={act.busy}>
          {place ? 'Save its name' : 'Put it on record'}
        </Button>
        <NotNow clear={clear} />
      </Actions>
    </Form>
  )
}
