/** A dose is due and nothing usable is left: the ways on, none of them a reproach. */
import { Suspense } from 'react'
import { pastServings, sourcesOf, type TonightLine } from '../../../core/index.ts'
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { Loading } from '../../parts/Loading.tsx'
import type { Reading } from '../useReading.ts'
import { PastFood } from './rare.ts'
import type { Dosing } from './useDosing.ts'

type Props = { readonly line: TonightLine; readonly reading: Reading; readonly dosing: Dosing }

export const NothingLeft = ({ line, reading, dosing }: Props) => {
  const { world, now } = reading
  const sources = sourcesOf(world, line.food.food, now)
  const past = pastServings(sources, line.plan.amount, line.night)
  return (
    <>
      {past.length > 0 ? (
        <Suspense fallback={<Loading says="One moment …" />}>
          <PastFood line={line} past={past} reading={reading} dosing={dosing} />
        </Suspense>
      ) : (
        <p>
          {sources.length > 0
            ? 'What there is is too little for a dose. Have a look at it, or use something else.'
            : 'A night without food is no harm: the small life grazes what is there for days.'}
        </p>
      )}
      <Actions>
        {sources.length > 0 && (
          <ButtonLink href="#/food" kind="quiet">
            See what there is
          </ButtonLink>
        )}
        <ButtonLink href="#/food/bottle/new" kind={sources.length > 0 ? 'quiet' : 'primary'}>
          Log a bottle
        </ButtonLink>
        <ButtonLink href="#/food/lot/new" kind="quiet">
          I already have frozen portions
        </ButtonLink>
      </Actions>
    </>
  )
}
