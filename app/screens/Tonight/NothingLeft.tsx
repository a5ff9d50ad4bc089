/** A dose is due and nothing usable is left: the ways on, none of them a reproach. */
import { sourcesOf, type TonightLine } from '../../../core/index.ts'
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { useReading } from '../useReading.ts'

export const NothingLeft = ({ line }: { readonly line: TonightLine }) => {
  const { world, now } = useReading()
  const past = sourcesOf(world, line.food.food, now).length > 0
  return (
    <>
      <p>
        {past
          ? 'What there is is past its day, or too little for a dose. Have a look at it, or use something else.'
          : 'A night without food is no harm: the small life grazes what is there for days.'}
      </p>
      <Actions>
        {past && <ButtonLink href="#/food">See what there is</ButtonLink>}
        <ButtonLink href="#/food/bottle/new" kind={past ? 'quiet' : 'primary'}>
          Log a bottle
        </ButtonLink>
        <ButtonLink href="#/food/lot/new" kind="quiet">
          I already have frozen portions
        </ButtonLink>
      </Actions>
    </>
  )
}
