/** The things that came in one parcel: bottles on record by a touch, anything else by a word. */
import { type BottleId, type Moment, purchaseOf, type World } from '../../../../core/index.ts'
import { LinkButton } from '../../../parts/Actions.tsx'
import { Field } from '../../../parts/Field.tsx'
import { NumberField } from '../../../parts/NumberField.tsx'
import { Picks } from '../../../parts/Picks.tsx'
import { bottleName } from '../../../words/names.ts'
import { capital } from '../../../words/numbers.ts'
import { useReading } from '../../useReading.ts'
import type { PurchaseFormProps } from './PurchaseForm.tsx'
import { bottleThing, otherThing, type PurchaseFields, type ThingFields } from './purchaseFields.ts'

/** Bottles offered: those of the form, and the last ones that came in no other parcel. */
const few = 6
const offered = (world: World, { things, purchase }: PurchaseFields, now: Moment): readonly BottleId[] => {
  const named = new Set(things.map(({ bottle }) => bottle))
  const free = [...world.bottles.keys()].filter((id) => {
    const parcel = purchaseOf(world, id, now)
    return !named.has(id) && (!parcel || parcel.purchase === purchase)
  })
  const last = new Set<string>(free.slice(-few))
  return [...world.bottles.keys()].filter((id) => named.has(id) || last.has(id)).reverse()
}

export const changeThing = (
  things: readonly ThingFields[],
  place: number,
  changed: Partial<ThingFields>,
): readonly ThingFields[] => things.map((thing, at) => (at === place ? { ...thing, ...changed } : thing))

export const InTheParcel = ({ fields, change, act }: PurchaseFormProps) => {
  const { world, now } = useReading()
  const bottles = offered(world, fields, now)
  const { things, currency } = fields
  const pick = (values: readonly string[]) =>
    change({
      things: [
        ...things.filter(({ bottle }) => bottle === '' || values.includes(bottle)),
        ...values
          .filter((id) => !things.some(({ bottle }) => bottle === id))
          .map((id) => bottleThing(world, id as BottleId, currency)),
      ],
    })
  return (
    <>
      {bottles.length > 0 ? (
        <Picks
          label="Which bottles of food?"
          hint="One that is not on record yet is logged first; what you have typed here stays."
          options={bottles.map((id): { value: string; label: string } => ({
            value: id,
            label: capital(bottleName(world, id, now)),
          }))}
          values={things.flatMap(({ bottle }) => (bottle ? [bottle] : []))}
          onChange={pick}
          error={act.wrong('things')}
        />
      ) : (
        <p>No bottle of food is on record yet.</p>
      )}
      {things.map(
        (thing, place) =>
          thing.bottle === '' && (
            <fieldset
              className="parcel-thing"
              aria-label={thing.what ? `What came: ${thing.what}` : 'Something else'}
              key={thing.key}
            >
              <Field
                label="What else was in it?"
                value={thing.what}
                error={act.wrong(`what ${place}`)}
                onChange={(what) => change({ things: changeThing(things, place, { what }) })}
              />
              <NumberField
                label="How many?"
                value={thing.count}
                error={act.wrong(`count ${place}`)}
                onChange={(count) => change({ things: changeThing(things, place, { count }) })}
              />
              <LinkButton onAct={() => change({ things: things.filter((_, at) => at !== place) })}>
                It was not in it
              </LinkButton>
            </fieldset>
          ),
      )}
      <div className="parcel-ways">
        <LinkButton onAct={() => change({ things: [...things, otherThing()] })}>Something else was in it</LinkButton>
        <a className="kind-link" href="#/food/bottle/new">
          Log a bottle
        </a>
      </div>
    </>
  )
}
