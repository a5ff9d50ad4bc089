/** To another door: all of it, some of its trays, or some loose in a bag. */
import { useState } from 'react'
import { type Lot, type PlaceId, placeAt, portionsLeft, traysNow } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { CountField } from '../../parts/CountField.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { haveMovedWords, movedWords } from '../../words/moving.ts'
import { portions } from '../../words/numbers.ts'
import { useReading } from '../useReading.ts'
import type { LotDeedProps } from './LotActs.tsx'
import { elsewhere, type MoveFields, moveFields, moveLot, partOf, traysToGo } from './moveFields.ts'
import { PlaceField } from './PlaceField.tsx'
import { Refused } from './Refused.tsx'
import { useAct } from './useAct.ts'

export const LotMove = ({ lot, onDone }: LotDeedProps) => {
  const [times, setTimes] = useState(0)
  return (
    <MoreExact key={times} label="Move to another door">
      <MoveForm
        lot={lot}
        onDone={(...done) => {
          setTimes(times + 1)
          onDone(...done)
        }}
      />
    </MoreExact>
  )
}

const waysOf = (lot: Lot): readonly { readonly value: MoveFields['how']; readonly label: string }[] => {
  const left = portionsLeft(lot)
  const trays = traysNow(lot)
  const all = { value: 'all', label: left === 1 ? 'The one portion' : `All ${portions(left)}` } as const
  return [
    all,
    ...(traysToGo(lot).length > 0 ? [{ value: 'trays', label: 'Some of the full trays' } as const] : []),
    ...(trays?.open && trays.full > 0
      ? [{ value: 'open', label: `The open tray, ${portions(trays.open.holds)}` } as const]
      : []),
    ...(left > 1 ? [{ value: 'some', label: trays ? 'Some, loose in a bag' : 'Some of them' } as const] : []),
  ]
}

const MoveForm = ({ lot, onDone }: LotDeedProps) => {
  const { world, now } = useReading()
  const act = useAct()
  const { fields, change: type, clear } = useDraft(`move/${lot.id}`, moveFields(world, lot, now))
  const change = (changed: Partial<MoveFields>) => {
    act.reset()
    type(changed)
  }
  const ways = waysOf(lot)
  const how = ways.some(({ value }) => value === fields.how) ? fields.how : 'all'
  const asked = { ...fields, how }
  const left = portionsLeft(lot)
  const part = partOf(asked, lot)
  const to = placeAt(world, fields.place as PlaceId, now)?.name ?? fields.placeName
  const says = part && movedWords(part.count, left, to)
  const door = lot.meltedOn ? fields.door : 'freezer'
  const save = async (asTheyAre = false) => {
    const written = await act.send(moveLot(asked, lot.id, asTheyAre))
    if (!written) return
    void clear()
    if (part) onDone(haveMovedWords(part.count, left, to), written)
  }
  return (
    <Form onSend={() => save()}>
      {lot.meltedOn && (
        <Choice
          label="They have thawed. Where do they go?"
          options={[
            { value: 'fridge', label: 'To a fridge' },
            { value: 'freezer', label: 'To a freezer' },
          ]}
          value={door}
          onChange={(to) => change({ door: to, ...elsewhere(world, to, lot.place, now) })}
        />
      )}
      <PlaceField door={door} fields={fields} onChange={change} act={act} except={lot.place} />
      {ways.length > 1 && (
        <Choice label="How much?" options={ways} value={how} onChange={(way) => change({ how: way })} />
      )}
      {how === 'trays' && (
        <CountField
          label="How many full trays?"
          fewer="One tray fewer"
          more="One tray more"
          min={1}
          max={traysToGo(lot).length}
          value={fields.trays}
          onChange={(trays) => change({ trays })}
          error={act.wrong('count')}
        />
      )}
      {how === 'some' && (
        <CountField
          label="How many?"
          min={1}
          max={left - 1}
          value={fields.some}
          onChange={(some) => change({ some })}
          error={act.wrong('count')}
        />
      )}
      {how !== 'all' && (
        <Field
          label="The mark of the part that moves"
          hint="It keeps its freezing day. Write this on its bag."
          value={fields.mark}
          onChange={(mark) => change({ mark })}
          error={act.wrong('mark')}
        />
      )}
      {says && <p>{says}</p>}
      <Refused act={act}>
        {act.refusal?.why === 'thawedPortions' && (
          <Actions>
            <Button kind="quiet" waiting={act.busy} onAct={() => void save(true)}>
              They only change doors, thawed as they are
            </Button>
          </Actions>
        )}
      </Refused>
      <Actions>
        <Button submit waiting={act.busy}>
          Move them
        </Button>
      </Actions>
    </Form>
  )
}
