/** All of it goes into another bag: same food, same size; it keeps as the one that goes first. */
import { useState } from 'react'
import { foodAt, ifJoined, joinable, joinLots, type Lot, type LotId, portionsLeft } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { frozenWords } from '../../words/food.ts'
import { placeName } from '../../words/names.ts'
import { capital, portions } from '../../words/numbers.ts'
import { haveJoinedWords, willJoinWords } from '../../words/trouble.ts'
import { useReading } from '../useReading.ts'
import type { LotDeedProps } from './LotActs.tsx'
import { Refused } from './Refused.tsx'
import { placed, trouble, useAct } from './useAct.ts'

export const JoinBag = ({ lot, onDone }: LotDeedProps) => {
  const { world, now } = useReading()
  const bags = joinable(world, lot)
  if (bags.length === 0 || !foodAt(world, lot.made.food, now)) return null
  return (
    <MoreExact label="Put them into another bag">
      <Panel lot={lot} bags={bags} onDone={onDone} />
    </MoreExact>
  )
}

const Panel = ({ lot, bags, onDone }: LotDeedProps & { readonly bags: readonly Lot[] }) => {
  const { world, now, today } = useReading()
  const act = useAct()
  const { fields, change, clear } = useDraft<{ into: string }>(`join/${lot.id}`, { into: '' })
  // Counted before it is done: afterwards there are none left here.
  const [count] = useState(portionsLeft(lot))
  const into = bags.find(({ id }) => id === fields.into)
  const joint = into && ifJoined(world, { from: lot.id, into: into.id }, now)
  const save = async (sure: boolean) => {
    const written = await act.send((latest, at) =>
      fields.into === ''
        ? trouble('into', { why: 'whichBag' })
        : placed(joinLots(latest, { from: lot.id, into: fields.into as LotId, sure }, at.now), { noSuchLot: 'into' }),
    )
    if (!written || !into) return
    void clear()
    onDone(haveJoinedWords(count, into.made.mark), written)
  }
  return (
    <Form onSend={() => save(false)}>
      <Choice
        label="Into which bag?"
        hint="Only bags of the same food, with portions of the same size."
        options={bags.map((bag): { value: string; label: string; hint: string } => ({
          value: bag.id,
          label: bag.made.mark,
          hint: capital(
            `${portions(portionsLeft(bag))}, ${frozenWords(bag, today)}, ${placeName(world, bag.place, now)}.`,
          ),
        }))}
        value={into?.id ?? null}
        onChange={(chosen) => {
          act.reset()
          change({ into: chosen })
        }}
        error={act.wrong('into')}
      />
      {into && joint && <p>{willJoinWords(joint.count, into.made.mark, joint.lastGood, today)}</p>}
      <Refused act={act}>
        {act.refusal?.why === 'spoilsTheBag' && (
          <Actions>
            <Button kind="quiet" waiting={act.busy} onAct={() => void save(true)}>
              It is done: note it
            </Button>
          </Actions>
        )}
      </Refused>
      <Actions>
        <Button submit waiting={act.busy}>
          Make them one bag
        </Button>
      </Actions>
    </Form>
  )
}
