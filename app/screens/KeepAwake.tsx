/** Whether the screen stays on, and the way to keep it on. */
import { Actions, Button } from '../../parts/Actions.tsx'
import { useScreenLock } from '../../state/screenLock.ts'
import { watchWords } from '../../words/watch.ts'

export const Awake = () => {
  const { lock, ask } = useScreenLock()
  return lock === 'awake' ? null : (
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
}
