/** Whether the browser has promised to keep the book, and the asking. */
import { useState } from 'react'
import { Actions, Button } from '../../parts/Actions.tsx'
import { askToPersist, usePersistence } from '../../state/persist.ts'
import { persistenceText } from '../../words/phone.ts'

export const Keeping = () => {
  const answer = usePersistence()
  const [asking, setAsking] = useState(false)
  const [asked, setAsked] = useState(false)
  const ask = async () => {
    setAsking(true)
    await askToPersist()
    setAsking(false)
    setAsked(true)
  }
  return (
    <>
      <p role="status">
        {asked && answer === 'mayBeCleared' && 'Asked again, with the same answer. '}
        {persistenceText(answer)}
      </p>
      {answer !== 'kept' && (
        <Actions>
          <Button kind="quiet" onAct={ask} waiting={asking}>
            {answer === undefined ? 'Ask it to keep this' : 'Ask again'}
          </Button>
        </Actions>
      )}
    </>
  )
}
