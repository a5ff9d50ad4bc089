/** The door to the evening watch. */
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { watchWords } from '../../words/watch.ts'

export const WatchLink = () => (
  <>
    <p>{watchWords.what}</p>
    <Actions>
      <ButtonLink kind="quiet" href="#/watch">
        Begin the evening watch
      </ButtonLink>
    </Actions>
  </>
)
