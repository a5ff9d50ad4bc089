/** Whether the screen stays on, in words, and the way to keep it on. */
import { Actions, Button } from '../parts/Actions.tsx'
import type { useScreenLock } from '../state/screenLock.ts'
import { watchWords } from '../words/watch.ts'

export const KeepAwake = ({ lock, ask }: ReturnType<typeof useScreenLock>) => (
  <>
    <p role="status">{watchWords[lock]}</p>
    {lock === 'asleep' && (
      <Actions>
        <Button kind="quiet" onAct={ask}>
          Keep the screen on
        </Button>
      </Actions>
    )}
  </>
)
