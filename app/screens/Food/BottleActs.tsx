/** What may be done with a bottle, all in place. */
import {
  type Bottle,
  type FoodDescribed,
  finishBottle,
  isBlock,
  letThaw,
  liquidGone,
  liquidLeft,
  openBottle,
  refreezing,
  today as todayHere,
} from '../../../core/index.ts'
import { Actions } from '../../parts/Actions.tsx'
import { millilitres } from '../../words/numbers.ts'
import { hereIn } from '../useReading.ts'
import { BottleMove } from './BottleMove.tsx'
import { Deed } from './Deed.tsx'
import { MeasureLiquid, SpiltLiquid } from './LiquidDeeds.tsx'
import { ThingInDoubt } from './ThingInDoubt.tsx'
import { placed } from './useAct.ts'

export type BottleDeedProps = { readonly bottle: Bottle; readonly onDone: (says: string) => void }

export const BottleActs = ({
  bottle,
  food,
  onDone,
}: BottleDeedProps & { readonly food: FoodDescribed | undefined }) => {
  const { id } = bottle
  const left = liquidLeft(bottle)
  return (
    <section aria-label="What to do with it">
      {food?.freezerLife && !refreezing(bottle) && (
        <Actions>
          <a className="button-link" href={`#/food/bottle/${id}/freeze`}>
            Freeze it
          </a>
        </Actions>
      )}
      {isBlock(bottle) && (
        <Deed
          label="Let it thaw"
          act="It is put in the fridge to thaw today"
          says="Thawing: good tonight and tomorrow night, and not frozen again."
          onDone={onDone}
          ask={() =>
            (world, { now }) =>
              placed(letThaw(world, id, hereIn(world, now)), '')
            }
        />
      )}
      {bottle.openedOn === undefined && (
        <Deed
          label="Open it"
          act="It is opened today"
          says="Opened today."
          onDone={onDone}
          ask={() =>
            (world, { now }) => {
              const here = hereIn(world, now)
              return placed(openBottle(world, { bottle: id, openedOn: todayHere(here) }, here), '')
            }}
        />
      )}
      <MeasureLiquid bottle={bottle} onDone={onDone} />
      <BottleMove bottle={bottle} onDone={onDone} />
      <ThingInDoubt it={bottle} onDone={onDone} />
      <SpiltLiquid bottle={bottle} onDone={onDone} />
      <Deed
        label="Throw it away"
        says={`${millilitres(left)} thrown away.`}
        act={`Throw away all ${millilitres(left)}`}
        reasons={['pastItsDay', 'smelt', 'thawed']}
        onDone={onDone}
        ask={(why) =>
          (world, { now }) => {
            const known = world.bottles.get(id)
            const amount = known ? liquidLeft(known) : left
            return placed(liquidGone(world, { bottle: id, amount, fate: 'discarded', ...why }, now), '')
          }}
      />
      <Deed
        label="It is finished"
        says="Finished. What the book still had stayed on its walls."
        act="Nothing more will come out of it"
        onDone={onDone}
        ask={() =>
          (world, { now }) =>
            placed(finishBottle(world, id, now), '')
          }
      />
    </section>
  )
}
