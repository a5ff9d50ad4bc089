/** One parcel that waits for its night: how long damage may be claimed, its cap, and the nights before it. */
import { claimUntil, type LiveBottlesCame, lookAgain, pourNights, uncapBottles, wallDay } from '../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../parts/Actions.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Section } from '../../parts/Section.tsx'
import { clock } from '../../words/dates.ts'
import { list } from '../../words/list.ts'
import { capital, millilitres, plural } from '../../words/numbers.ts'
import { claimWords, lookedOptions, pourNightHint, pourNightWords } from '../../words/seeding.ts'
import { animalWords } from '../../words/seedingEntries.ts'
import { PhotosOf } from '../Photos/PhotosOf.tsx'
import type { OfTank } from './ofTank.ts'
import { placed, useSeeding } from './useSeeding.ts'
import { WholeForm } from './WholeForm.tsx'

export const Parcel = ({ parcel, tank, reading }: OfTank & { readonly parcel: LiveBottlesCame }) => {
  const { world, now, zone, today } = reading
  const act = useSeeding(reading)
  const until = claimUntil(parcel)
  const uncapped = world.uncapped.get(parcel.parcel)
  const what = parcel.bottles.map(
    ({ animals, count, holds }) =>
      `${plural(count, 'bottle', 'bottles')} of ${animalWords[animals]}, ${millilitres(holds)} each`,
  )
  const looked = lookedOptions.find(({ value }) => value === parcel.looked)
  const uncap = () => void act.send((fresh, { now: at }) => placed(uncapBottles(fresh, parcel.parcel, at)))
  const judge = (how: LiveBottlesCame['looked']) =>
    void act.send((fresh, { now: at }) => placed(lookAgain(fresh, { parcel: parcel.parcel, looked: how }, at)))
  return (
    <Section title={capital(list(what))}>
      <p>
        At the door at {clock(parcel.came, zone)}. {looked?.label}.
      </p>
      {until !== undefined && <p>{claimWords(until, now, zone, today, wallDay(until, zone))}</p>}
      {parcel.looked === 'dead' && uncapped === undefined && (
        <Notice>
          Warm them first, then judge: cold ones lie still. A photo of the box, the label and the bottle against the
          light helps a claim.
        </Notice>
      )}
      {uncapped === undefined ? (
        <Actions>
          <Button onAct={uncap} waiting={act.busy}>
            The caps are off
          </Button>
        </Actions>
      ) : (
        <p>
          Open since {clock(uncapped, zone)}. A room never gets as warm as the tank and need not: the last of it goes by
          floating the bottles, or with a little tank water.
        </p>
      )}
      <WholeForm act={act} />
      <PhotosOf
        of={{ parcel: parcel.parcel }}
        about="the box, the label, a bottle against the light"
        hint="The box, the label, and a bottle against the light: with the time beside them they help a claim."
        reading={reading}
      />
      {parcel.looked !== 'lively' && (
        <MoreExact label="Look again, once they are warm">
          <Actions>
            <Button kind="quiet" onAct={() => judge('lively')} waiting={act.busy}>
              They are lively
            </Button>
            <Button kind="quiet" onAct={() => judge('notSure')} waiting={act.busy}>
              Not sure
            </Button>
            <Button kind="quiet" onAct={() => judge('dead')} waiting={act.busy}>
              Dead, it seems
            </Button>
          </Actions>
        </MoreExact>
      )}
      <h3>Which night?</h3>
      <Lines>
        {pourNights(world, tank, parcel.came, now).map((night) => (
          <Line key={night.night} below={pourNightHint(night, true)}>
            {pourNightWords(night, tank, now)}
          </Line>
        ))}
      </Lines>
      <Actions>
        <ButtonLink kind={uncapped === undefined ? 'quiet' : 'primary'} href={`#/seeding/${tank.tank}/plan`}>
          Plan the night
        </ButtonLink>
      </Actions>
    </Section>
  )
}
