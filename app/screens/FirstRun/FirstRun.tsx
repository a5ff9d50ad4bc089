/** The first evening: three questions, and the first dose is planned. */
import { useState } from 'react'
import {
  type BeginRefusal,
  type BottleId,
  bandOf,
  begin,
  type FoodId,
  type LotId,
  newFood,
  type PlaceId,
  type PlanId,
  type TankId,
  usualFood,
} from '../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../parts/Actions.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { newId } from '../../state/ids.ts'
import { phoneZone } from '../../state/phoneZone.ts'
import { useDraft } from '../../state/useDraft.ts'
import { useRequest } from '../../state/useRequest.ts'
import { firstDoseWords } from '../../words/plan.ts'
import { refusalText } from '../../words/refusals.ts'
import { waterRefusalText } from '../../words/waterRefusals.ts'
import { LookRound } from '../LookRound.tsx'
import { useReading } from '../useReading.ts'
import { ExactFields } from '../Water/ExactFields.tsx'
import { type TankWrong, wrongAt } from '../Water/readFields.ts'
import { exactField } from '../Water/TankForm.tsx'
import { newTankFields, readTank, type TankFields } from '../Water/tankFields.ts'
import { WaterQuestion } from '../Water/WaterQuestion.tsx'
import { FoodQuestion } from './FoodQuestion.tsx'
import { type FoodFields, type FoodWrong, readFoodFields } from './foodFields.ts'

type Fields = TankFields & FoodFields & { readonly tank: TankId; readonly plan: PlanId }

const newFields = (month: string): Fields => ({
  ...newTankFields(phoneZone()),
  have: undefined,
  foodName: 'Green food',
  sort: 'freshNonViable',
  placeName: '',
  size: '',
  sizeUnit: undefined,
  begun: 'new',
  full: '80',
  arrived: '',
  count: null,
  each: '1',
  month,
  tank: newId(),
  plan: newId(),
  food: newId<FoodId>(),
  place: newId<PlaceId>(),
  bottle: newId<BottleId>(),
  lot: newId<LotId>(),
})

export const FirstRun = () => {
  const reading = useReading()
  const { now, today } = reading
  const { fields, change, clear } = useDraft<Fields>('begin', newFields(`${today.slice(0, 7)}-01`))
  const { busy, refusal, send, reset } = useRequest<BeginRefusal>()
  const [tankWrong, setTankWrong] = useState<TankWrong>([])
  const [foodWrong, setFoodWrong] = useState<FoodWrong>()

  const typed = (part: Partial<Fields>) => {
    change(part)
    setTankWrong([])
    setFoodWrong(undefined)
    reset()
  }
  const save = async () => {
    const tank = readTank(fields.tank, fields, now)
    const food = readFoodFields(fields, today)
    setTankWrong(tank.ok ? [] : tank.refusal)
    setFoodWrong(food.ok ? undefined : food.refusal)
    if (!tank.ok || !food.ok) return
    const [described] = tank.value
    const written = await send((_, at) => {
      const asked = { tank: { ...described, at: at.now }, ...food.value, plan: fields.plan }
      return begin(asked, { now: at.now, zone: described.zone })
    })
    // Tonight takes this screen's place as soon as there is a tank.
    if (written) await clear()
  }

  const shared = { fields, change: typed, reading }
  const noLights = wrongAt(tankWrong, 'lightsOut')
  return (
    <Page title="Smallhours" answer="Three questions, and the first dose is planned.">
      <Form onSend={save}>
        <WaterQuestion {...shared} wrong={tankWrong} />
        <ClockField
          label="When do the lights go out?"
          value={fields.lightsOut}
          onChange={(lightsOut) => typed({ lightsOut })}
          error={noLights && waterRefusalText(noLights, reading)}
        />
        <FoodQuestion {...shared} wrong={foodWrong} />
        <MoreExact label="Make the tank more exact" open={exactField(tankWrong)}>
          <ExactFields {...shared} wrong={tankWrong} />
        </MoreExact>
        <FirstDose fields={fields} />
        {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
        <Actions>
          <Button submit waiting={busy}>
            Begin
          </Button>
          <ButtonLink kind="quiet" href="#/phone">
            I have a backup
          </ButtonLink>
        </Actions>
        <LookRound reading={reading} />
        <Notice kind="caution">
          Unplug what you can before hands go in the water. This is not veterinary advice, and the food’s own label
          comes first.
        </Notice>
      </Form>
    </Page>
  )
}

/** The answer already, as soon as the water is known. */
const FirstDose = ({ fields }: { readonly fields: Fields }) => {
  const { now } = useReading()
  const tank = readTank(fields.tank, fields, now)
  if (!tank.ok) return null
  const food = { kind: 'foodDescribed', at: now, ...newFood(fields.food, fields.foodName, fields.sort) } as const
  const band = bandOf(tank.value[0], food)
  return <Notice>{firstDoseWords(band, usualFood[fields.sort].everyNights)}</Notice>
}
