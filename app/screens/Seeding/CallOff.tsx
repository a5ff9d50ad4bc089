/** A night that is not to be: the plan ends, the record stays. */
import { Actions, Button } from '../../parts/Actions.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import type { Running } from './useRun.ts'

export const CallOff = ({ running }: { readonly running: Running }) => (
  <MoreExact label="Not tonight">
    <p>
      The plan ends; what was ticked and poured stays written down. The bottles can wait open, shaded and at room
      temperature.
    </p>
    <Actions>
      <Button kind="quiet" waiting={running.act.busy} onAct={() => void running.stop('calledOff', 'Called off.')}>
        Call it off
      </Button>
    </Actions>
  </MoreExact>
)
