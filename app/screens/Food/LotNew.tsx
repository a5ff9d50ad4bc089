/** She starts in the middle: portions are in the freezer already. */
import { useLocation } from 'wouter'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { CountField } from '../../parts/CountField.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { ListField } from '../../parts/ListField.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Page } from '../../parts/Page.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { dayEcho, dayInFull, monthsBack } from '../../words/dates.ts'
import { portions } from '../../words/numbers.ts'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { KeptAs } from './KeptAs.tsx'
import { type LotFields, lotFields, monthsOffered } from './lotFields.ts'
import { NotNow } from './NotNow.tsx'
import { PickField } from './PickField.tsx'
import { PlaceField } from './PlaceField.tsx'
import { Refused } from './Refused.tsx'
import { logLot, lotAnswer } from './readLot.ts'
import { TrayQuestions } from './TrayQuestions.tsx'
import { mostPortions } from './trays.ts'
import { useAct } from './useAct.ts'

export const LotNew = () => {
  const reading = useReading()
  const { world, now, today } = reading
  const [, go] = useLocation()
  const act = useAct()
  const { fields, change: type, clear, restoredFrom } = useDraft('lot', lotFields(world, today, now))
  const change = (changed: Partial<LotFields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    if (!(await act.send(logLot(fields)))) return
    await clear()
    go(`/food/lot/${fields.lot}`)
  }
  const lastGood = lotAnswer(fields, world, now)
  return (
    <Page
      title="Portions in the freezer already"
      answer={
        lastGood
          ? `${fields.made ? portions(fields.made) : 'Good'}${fields.made ? ', good' : ''} frozen until ${dayInFull(lastGood)}.`
          : 'How many are there, and about when were they frozen?'
      }
    >
      <Form onSend={save}>
        <Unfinished {...reading} since={restoredFrom} onFresh={clear} />
        <CountField
          key={restoredFrom}
          label="How many portions?"
          max={mostPortions}
          value={fields.made ?? null}
          onChange={(made) => change({ made: made ?? undefined })}
          error={act.wrong('made')}
        />
        <NumberField
          label="Each holds"
          unit="mL"
          value={fields.each}
          onChange={(each) => change({ each })}
          error={act.wrong('each')}
        />
        <Choice
          label="When were they frozen?"
          options={[
            { value: 'month', label: 'I know the month', hint: 'Taken as its first day, the earliest it can be.' },
            { value: 'day', label: 'I know the day' },
          ]}
          value={fields.when}
          onChange={(when) => change({ when })}
        />
        {fields.when === 'month' ? (
          <ListField
            label="In which month?"
            options={monthsBack(today, monthsOffered)}
            none="Choose a month"
            value={fields.month}
            onChange={(month) => change({ month })}
            error={act.wrong('month') ?? act.wrong('frozenOn')}
          />
        ) : (
          <DayField
            label="Frozen on"
            latest={today}
            value={fields.frozenOn}
            echo={dayEcho(fields.frozenOn)}
            onChange={(frozenOn) => change({ frozenOn })}
            error={act.wrong('frozenOn')}
          />
        )}
        <PickField fields={fields} onChange={change} act={act} />
        <PlaceField door="freezer" fields={fields} onChange={change} act={act} />
        <KeptAs fields={fields} onChange={change} />
        {fields.keptAs === 'trays' && <TrayQuestions fields={fields} change={change} wrong={act.wrong} />}
        <Field
          label="Its mark, as on the bag"
          value={fields.mark}
          onChange={(mark) => change({ mark })}
          error={act.wrong('mark')}
        />
        <Refused act={act} />
        <Actions>
          <Button submit waiting={act.busy}>
            Put them on record
          </Button>
          <NotNow clear={clear} />
        </Actions>
      </Form>
    </Page>
  )
}
