/** A tank, new or described again. */
import { useState } from 'react'
import { useLocation, useParams } from 'wouter'
import { inForce, ok, retireTank, type TankId, tankKept } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { now as nowIs, phoneZone } from '../../state/clock.ts'
import { newId } from '../../state/ids.ts'
import { useDraft } from '../../state/useDraft.ts'
import { useRequest } from '../../state/useRequest.ts'
import { refusalText } from '../../words/refusals.ts'
import { Ending } from '../Ending.tsx'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { ExactFields } from './ExactFields.tsx'
import { type FieldRefusal, fieldsOf, newTankFields, readTank, type TankField, type TankFields } from './tankFields.ts'
import { WaterQuestion } from './WaterQuestion.tsx'

export const TankForm = () => {
  const { id } = useParams<{ id: TankId }>()
  const reading = useReading()
  const known = inForce(reading.world.tanks.get(id) ?? [], reading.now)
  const kept = tankKept(reading.world, id, reading.now)
  const [, go] = useLocation()
  const {
    fields,
    change: type,
    clear,
    restoredFrom,
  } = useDraft(`tank/${id}`, {
    tank: known?.tank ?? newId<TankId>(),
    ...(known ? fieldsOf(known) : newTankFields(phoneZone())),
  })
  const { busy, refusal: stopped, send } = useRequest<never>()
  const [wrong, setWrong] = useState<FieldRefusal<TankField>>()

  const change = (changed: Partial<TankFields>) => {
    setWrong(undefined)
    type(changed)
  }
  const save = async () => {
    const read = readTank(fields.tank, fields, nowIs())
    setWrong(read.ok ? undefined : read.refusal)
    if (!read.ok) return
    const [described] = read.value
    const written = await send((_, { now }) => ok([{ ...described, at: now }]))
    if (!written) return
    await clear()
    go('/water')
  }
  const shared = { fields, change, refusal: wrong, reading }
  return (
    <Page
      title={known ? known.name : 'A tank'}
      answer={
        known
          ? 'Describe it as it is now; what it was before stays in the diary.'
          : 'How much water, and when do the lights go out?'
      }
    >
      <Form onSend={save}>
        <Unfinished since={restoredFrom} zone={reading.zone} today={reading.today} onFresh={() => void clear()} />
        {known && <Field label="Name" value={fields.name} onChange={(name) => change({ name })} />}
        <WaterQuestion {...shared} />
        <ClockField
          label="When do the lights go out?"
          value={fields.lightsOut}
          onChange={(lightsOut) => change({ lightsOut })}
          error={wrong?.field === 'lightsOut' ? refusalText(wrong.refusal, reading) : undefined}
        />
        <MoreExact label="Make it more exact" open={exactField(wrong)}>
          <ExactFields {...shared} named={known !== undefined} />
        </MoreExact>
        {stopped && <Notice kind="refusal">{refusalText(stopped, reading)}</Notice>}
        <Actions>
          <Button submit waiting={busy}>
            {known && !kept ? 'Save and bring it back' : 'Save'}
          </Button>
        </Actions>
      </Form>
      {kept && (
        <Ending
          label="No longer kept"
          says={`${kept.name} and its past stay in the diary. Its plans end, and it can be brought back.`}
          act="It is no longer kept"
          reasons={['takenDown', 'sold', 'leak', 'movedHouse']}
          ask={(why) =>
            (world, { now }) =>
              retireTank(world, { tank: kept.tank, ...why }, now)
            }
          onDone={() => go('/water')}
        />
      )}
    </Page>
  )
}

/** The folded part opens where something in it is wrong. */
export const exactField = (wrong: FieldRefusal<TankField> | undefined): boolean =>
  wrong !== undefined && wrong.field !== 'volume' && wrong.field !== 'unit' && wrong.field !== 'lightsOut'
