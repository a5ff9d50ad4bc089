/** At the freezer, door open, wet hands: counting, losing, throwing away, finding. */
import { type Entry, type Fact, type Lot, portionsFound, portionsGone, portionsLeft } from '../../../core/index.ts'
import { comesToWords, leavesWords } from '../../words/moving.ts'
import { portions } from '../../words/numbers.ts'
import { CountAgain } from './CountAgain.tsx'
import { CountDeed } from './CountDeed.tsx'
import { GiveAway } from './GiveAway.tsx'
import { JoinBag } from './JoinBag.tsx'
import { LotMove } from './LotMove.tsx'
import { ThingInDoubt } from './ThingInDoubt.tsx'
import { TicksDeed } from './TicksDeed.tsx'
import { placed } from './useAct.ts'

/** What was done, in words, and where a touch can take it back, what was written for it. */
export type Done = (says: string, written?: readonly Entry<Fact>[]) => void
export type LotDeedProps = { readonly lot: Lot; readonly onDone: Done }

export const LotActs = ({ lot, onDone }: LotDeedProps) => {
  const { id } = lot
  const left = portionsLeft(lot)
  return (
    <section aria-label="What to do with them">
      <CountAgain lot={lot} onDone={onDone} />
      {left > 0 && <TicksDeed lot={lot} onDone={onDone} />}
      {left > 0 && (
        <>
          <CountDeed
            label="Dropped or lost some"
            question="How many?"
            start={1}
            most={left}
            reasons={['dropped', 'broken', 'thawed']}
            act={(count) => `Take ${portions(count)} off`}
            after={(count) => leavesWords(left - count)}
            onDone={onDone}
            ask={(count, why) =>
              (world, { now }) =>
                placed(portionsGone(world, { lot: id, count, fate: 'lost', ...why }, now), 'count')
              }
          />
          <CountDeed
            label="Throw away"
            question="How many?"
            start={1}
            most={left}
            all={`All ${portions(left)}`}
            reasons={['pastItsDay', 'thawed', 'smelt']}
            act={(count) => `Throw away ${portions(count)}`}
            after={(count) => leavesWords(left - count)}
            onDone={onDone}
            ask={(count, why) =>
              (world, { now }) =>
                placed(portionsGone(world, { lot: id, count, fate: 'discarded', ...why }, now), 'count')
              }
          />
        </>
      )}
      <CountDeed
        label="Found more"
        question="How many more?"
        start={1}
        most={9999}
        reasons={['miscounted', 'mistake']}
        act={(count) => `Add ${portions(count)}`}
        after={(count) => comesToWords(left + count)}
        onDone={onDone}
        ask={(count, why) =>
          (world, { now }) =>
            placed(portionsFound(world, { lot: id, count, ...why }, now), 'count')
          }
      />
      {lot.gone > 0 && (
        <CountDeed
          label="Put back, still hard"
          question="How many went back?"
          start={1}
          most={lot.gone}
          reasons={[]}
          act={(count) => `Put ${portions(count)} back`}
          after={(count) => `${comesToWords(left + count)} One that has begun to thaw does not go back.`}
          onDone={onDone}
          ask={(count) =>
            (world, { now }) =>
              placed(portionsFound(world, { lot: id, count, why: 'putBack' }, now), 'count')
            }
        />
      )}
      {left > 0 && (
        <>
          <GiveAway lot={lot} onDone={onDone} />
          <LotMove lot={lot} onDone={onDone} />
          <JoinBag lot={lot} onDone={onDone} />
          <ThingInDoubt it={lot} onDone={onDone} />
        </>
      )}
    </section>
  )
}
