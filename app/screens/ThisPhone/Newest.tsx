/** Looks for a newer version by hand; taking it is offered where it always is. */
import { useState } from 'react'
import { Actions, Button } from '../../parts/Actions.tsx'
import { type LookedForUpdate, lookForUpdate } from '../../state/updates.ts'
import { updateText } from '../../words/phone.ts'

export const Newest = () => {
  const [looking, setLooking] = useState(false)
  const [found, setFound] = useState<LookedForUpdate>()
  const look = async () => {
    setLooking(true)
    setFound(await lookForUpdate())
    setLooking(false)
  }
  return (
    <Actions>
      <Button kind="quiet" waiting={looking} onAct={() => void look()}>
        Look for an update
      </Button>
      <output>{found && !looking && updateText(found)}</output>
    </Actions>
  )
}
