/** A bag has lost its label: what it may be, and the earliest day that makes it. */
import { useLocation } from 'wouter'
import {
  earlier,
  earliestFrozen,
  foodAt,
  foodsAt,
  freezingsOf,
  isDay,
  lastGoodFrozen,
  portionsLeft,
  readMillilitres,
} from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { Choice } from '../../../parts/Choice.tsx'
import { CountField } from '../../../parts/CountField.tsx'
import { Field } from '../../../parts/Field.tsx'
import { Form } from '../../../parts/Form.tsx'
import { ListField } from '../../../parts/ListField.tsx'
import { NumberField } from '../../../parts/NumberField.tsx'
import { Page } from '../../../parts/Page.tsx'
import { Picks } from '../../../parts/Picks.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { dayInFull, monthsBack } from '../../../words/dates.ts'
import { frozenWords } from '../../../words/food.ts'
import { nextMark } from '../../../words/freezing.ts'
import { portions } from '../../../words/numbers.ts'
import { Unfinished } from '../../Unfinished.tsx'
import { useReading } from '../../useReading.ts'
import { monthsOffered } from '../lotFields.ts'
import { NotNow } from '../NotNow.tsx'
import { PlaceField } from '../PlaceField.tsx'
import { Refused } from '../Refused.tsx'
import { mostPortions } from '../trays.ts'
import { useAct } from '../useAct.ts'
import { logUnlabelled, none, other, type UnlabelledFields, unlabelledFields } from './unlabelledFields.ts'

export const Unlabelled = () => {
  const reading = useReading()
  const { world, now, today } = reading
  const [, go] = useLocation()
  const act = useAct()
  const {
    fields,
    change: type,
    clear,
    restoredFrom,
  } = useDraft<UnlabelledFields>('unlabelled', unlabelledFields(world, `${nextMark(world)}, no label`, now))
  const change = (changed: Partial<UnlabelledFields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    if (!(await act.send(logUnlabelled(fields)))) return
    await clear()
    go(`/food/lot/${fields.lot}`)
  }
  const foods = foodsAt(world, now)
  const food = fields.food === '' ? undefined : foodAt(world, fields.food, now)
  const freezings = food ? freezingsOf(world, food.food) : []
  const known = earliestFrozen(freezings.filter(({ id }) => fields.mayBe.includes(id)))
  const older = fields.mayBe.includes(other) && isDay(fields.month) ? fields.month : undefined
  const since = known && older ? earlier(known, older) : (known ?? older)
  const until = since && food && lastGoodFrozen({ frozenOn: since, late: false }, food)
  const each = readMillilitres(fields.each)
  const bags = [...world.lots.values()].filter(
    ({ left, made }) => left > 0 && made.food === fields.food && each.ok && made.each === each.value,
  )
  return (
    <Page
      title="A bag without its label"
      answer={
        since
          ? `Taken as frozen about ${dayInFull(since)}, the earliest it can be${until ? `: good until ${dayInFull(until)}` : ''}.`
          : 'Which of your freezings may it be? It is taken as the oldest of them.'
      }
    >
      <Form onSend={save}>
        <Unfinished {...reading} since={restoredFrom} onFresh={() => void clear()} />
        <CountField
          key={restoredFrom}
          label="How many portions?"
          min={1}
          max={mostPortions}
          value={fields.count}
          onChange={(count) => change({ count })}
          error={act.wrong('count')}
        />
        <NumberField
          label="Each holds"
          unit="mL"
          value={fields.each}
          onChange={(typed) => change({ each: typed, countedIn: none })}
          error={act.wrong('each')}
        />
        {foods.length > 1 && (
          <Choice
            label="Which food?"
            options={foods.map((one): { value: string; label: string } => ({ value: one.food, label: one.name }))}
            value={fields.food || null}
            onChange={(chosen) =>
              change({
                food: foods.find((one) => one.food === chosen)?.food ?? '',
                mayBe: [],
                countedIn: none,
              })
            }
          />
        )}
        <Picks
          label="Which may it be?"
          hint="All that come to mind: the oldest of them counts."
          options={[
            ...freezings.map((lot): { value: string; label: string } => ({
              value: lot.id,
              label: `${lot.made.mark}, ${frozenWords(lot, today)}`,
            })),
            { value: other, label: 'one that is not on record' },
          ]}
          values={fields.mayBe}
          onChange={(mayBe) => change({ mayBe })}
          error={act.wrong('mayBe')}
        />
        {fields.mayBe.includes(other) && (
          <ListField
            label="No older than"
            options={monthsBack(today, monthsOffered)}
            none="Choose a month"
            value={fields.month}
            onChange={(month) => change({ month })}
            error={act.wrong('month')}
          />
        )}
        {bags.length > 0 && (
          <Choice
            label="Are they counted in one of your bags already?"
            hint="Then that bag has as many fewer, and nothing is counted twice."
            options={[
              { value: none, label: 'No, in none' },
              ...bags.map((lot): { value: string; label: string } => ({
                value: lot.id,
                label: `In ${lot.made.mark}, ${portions(portionsLeft(lot))} by the book`,
              })),
            ]}
            value={fields.countedIn}
            onChange={(countedIn) => change({ countedIn })}
            error={act.wrong('countedIn')}
          />
        )}
        <PlaceField door="freezer" fields={fields} onChange={change} act={act} />
        <Field
          label="Its new mark: write it on the bag"
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
