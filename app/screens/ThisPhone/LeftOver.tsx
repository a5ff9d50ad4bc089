/** Pictures whose entries were crossed out still take room: deleted for good only here, and only by her. */
import { useEffect, useRef, useState } from 'react'
import { Actions, Button } from '../../parts/Actions.tsx'
import { deleteLeftOver, onPictures, picturesLeftOver } from '../../state/photos.ts'
import { useWorld } from '../../state/store.ts'
import { deletedText, leftOverText } from '../../words/photos.ts'

export const LeftOver = () => {
  const { photos } = useWorld()
  const [left, setLeft] = useState(0)
  const [asking, setAsking] = useState(false)
  const [said, setSaid] = useState('')
  // biome-ignore lint/correctness/useExhaustiveDependencies: counted again when a photo is crossed out
  useEffect(() => {
    let here = true
    const count = () =>
      void picturesLeftOver().then((found) => {
        if (here && found.ok) setLeft(found.value.length)
      })
    count()
    const stop = onPictures(count)
    return () => {
      here = false
      stop()
    }
  }, [photos])
  // The button that was touched is gone.
  const panel = useRef<HTMLDivElement>(null)
  const show = (asked: boolean) => {
    setAsking(asked)
    panel.current?.focus()
  }
  const remove = async () => {
    const gone = await deleteLeftOver()
    show(false)
    if (!gone.ok) return setSaid('They could not be deleted just now.')
    setLeft(0)
    setSaid(deletedText(gone.value))
  }
  return (
    <div ref={panel} tabIndex={-1}>
      {left > 0 && <p>{leftOverText(left)}</p>}
      <Actions>
        {left > 0 && !asking && (
          <Button kind="quiet" onAct={() => show(true)}>
            Delete them
          </Button>
        )}
        {asking && (
          <>
            <Button onAct={remove}>Delete them for good</Button>
            <Button kind="quiet" onAct={() => show(false)}>
              Keep them
            </Button>
          </>
        )}
        <output>{said}</output>
      </Actions>
    </div>
  )
}
