/** What was taken off the list comes back to it: what became of it meanwhile, one button. */
import { Actions, Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Refused } from './Refused.tsx'
import { type FormAsk, useAct } from './useAct.ts'

export const BringBack = ({ says, ask }: { readonly says: string; readonly ask: FormAsk }) => {
  const act = useAct()
  return (
    <Notice>
      <p>{says}</p>
      <Refused act={act} />
      <Actions>
        <Button kind="quiet" waiting={act.busy} onAct={() => void act.send(ask)}>
          Bring it back
        </Button>
      </Actions>
    </Notice>
  )
}
