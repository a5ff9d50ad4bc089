/** A tank, new or described again. */
import { useState } from 'react'
import { useLocation, useParams } from 'wouter'
import {
  freeName,
  inForce,
  nameTaken,
  ok,
  refuse,
  retireTank,
  type TankId,
  tankKept,
  tanksAt,
} from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { now as nowIs } from '../../state/clock.ts'
import { newId } from '../../state/ids.ts'
import { phoneZone } from '../../state/phoneZone.ts'
import { useDraft } from '../../state/useDraft.ts'
import { fromStorage, useRequest } from '../../state/useRequest.ts'
import { nameTakenWords } from '../../words/plan.ts'
import { refusalText } from '../../words/refusals.ts'
import { waterRefusalText } from '../../words/waterRefusals.ts'
import { Ending } from '../Ending.tsx'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { ExactFields } from './ExactFields.tsx'
import { type TankWrong, wrongAt } from './readFields.ts'
import { fieldsOf, newTankFields, readTank, type TankFields, usualName } from './tankFields.ts'
import { WaterQuestion } from './WaterQuestion.tsx'

type NameTaken = { readonly why: 'nameTaken'; readonly name: string }

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
    ...(known ? fieldsOf(known) : newTankFields(phoneZone(), freeName(reading.world, id, usualName, reading.now))),
  })
  // With one tank its name goes without saying.
  const askName = known !== undefined || tanksAt(reading.world, reading.now).length > 0
  const { busy, refusal: stopped, send, reset } = useRequest<NameTaken>()
  const [wrong, setWrong] = useState<TankWrong>([])

  const change = (changed: Partial<TankFields>) => {
    setWrong([])
    reset()
    type(changed)
  }
  const save = async (alike = false) => {
    const read = readTank(fields.tank, fields, nowIs())
    setWrong(read.ok ? [] : read.refusal)
    if (!read.ok) return
    const [described] = read.value
    const { tank, name } = described
    // What stands under this name already was decided then.
    const decided = alike || (kept !== undefined && kept.name === name)
    const written = await send((world, { now }) =>
      !decided && nameTaken(world, tank, name, now)
        ? refuse({ why: 'nameTaken', name })
        : ok([{ ...described, at: now }]),
    )
    if (!written) return
    await clear()
    go('/water')
  }
  const taken = stopped?.why === 'nameTaken' ? stopped : undefined
  const shared = { fields, change, wrong, reading }
  const noLights = wrongAt(wrong, 'lightsOut')
  return (
    <Page
      title={known ? known.name : 'A tank'}
      answer={
        known
          ? 'Describe it as it is now; what it was before stays in the diary.'
          : 'How much water, and when do the lights go out?'
      }
    >
      <Form onSend={() => save()}>
        <Unfinished since={restoredFrom} zone={reading.zone} today={reading.today} onFresh={() => void clear()} />
        {askName && (
          <Field
            label={known ? 'Name' : 'What do you call it?'}
            value={fields.name}
            onChange={(name) => change({ name })}
            error={taken && nameTakenWords(taken.name)}
          />
        )}
        {taken && (
          <Button kind="quiet" waiting={busy} onAct={() => void save(true)}>
            Both go by that name
          </Button>
        )}
        <WaterQuestion {...shared} />
        <ClockField
          label="When do the lights go out?"
          value={fields.lightsOut}
          onChange={(lightsOut) => change({ lightsOut })}
          error={noLights && waterRefusalText(noLights, reading)}
        />
        <MoreExact label="Make it more exact" open={exactField(wrong)}>
          <ExactFields {...shared} named={askName} />
        </MoreExact>
        {stopped && fromStorage(stopped) && <Notice kind="refusal">{refusalText(stopped, reading)}</Notice>}
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
export const exactField = (wrong: TankWrong): boolean =>
  wrong.some(({ field }) => field !== 'volume' && field !== 'unit' && field !== 'lightsOut')
