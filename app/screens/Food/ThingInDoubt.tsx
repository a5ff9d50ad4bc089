/** On a card: smell and look at it, set it aside, or take it back into use. */
import { type Bottle, type FoodThing, type Lot, setAside, takeBack } from '../../../core/index.ts'
import { Actions } from '../../parts/Actions.tsx'
import { Deed } from './Deed.tsx'
import { placed } from './useAct.ts'

type ThingInDoubtProps = { readonly it: Bottle | Lot; readonly onDone: (says: string) => void }

export const ThingInDoubt = ({ it, onDone }: ThingInDoubtProps) => {
  const thing: FoodThing = 'made' in it ? { lot: it.id } : { bottle: it.id }
  return (
    <>
      <Actions>
        <a href={`#/food/${'made' in it ? 'lot' : 'bottle'}/${it.id}/smell`}>Smell and look</a>
      </Actions>
      {it.aside ? (
        <Deed
          key="back"
          label="Take it back into use"
          act="Back into use"
          says="Back in use."
          reasons={['sniffed', 'mistake']}
          onDone={onDone}
          ask={(why) =>
            (world, { now }) =>
              placed(takeBack(world, { thing, ...why }, now), '')
            }
        />
      ) : (
        <Deed
          key="aside"
          label="Set it aside"
          act="Set aside, for no dose"
          says="Set aside. Nothing is thrown away for you."
          reasons={['smelt', 'thawed']}
          onDone={onDone}
          ask={(why) =>
            (world, { now }) =>
              placed(setAside(world, { thing, ...why }, now), '')
            }
        />
      )}
    </>
  )
}
