/** Takes the act back, for a few seconds, under the thumb that did it. */
import '../styles/act.css'
import { useEffect, useRef } from 'react'

type UndoBarProps = {
  /** The moment it goes, in milliseconds as `now` is; null when there is nothing to take back. */
  readonly until: number | null
  readonly now: number
  /** How long it stands in all, so that the line along its foot starts full. */
  readonly seconds?: number
  /** What was done: announced. */
  readonly says: string
  readonly undo: string
  readonly onUndo: () => void
}

export const UndoBar = ({ until, now, seconds = 10, says, undo, onUndo }: UndoBarProps) => {
  const left = until === null ? 0 : Math.max(0, until - now) / (seconds * 1000)
  const there = left > 0
  const button = useRef<HTMLButtonElement>(null)
  // Where the act took its own button off the screen, the focus goes on from here rather than from nowhere.
  useEffect(() => {
    if (there && document.activeElement === document.body) button.current?.focus({ preventScroll: true })
  }, [there])
  // The status stands empty beforehand: a region that arrives together with its words is often not read out.
  return (
    <div className="undo-bar">
      <output className="undo-says">{there ? says : ''}</output>
      {there && (
        <button ref={button} type="button" className="undo-button" onClick={onUndo}>
          {undo}
          <svg className="undo-left" viewBox="0 0 100 1" preserveAspectRatio="none" aria-hidden="true">
            <rect width={Math.min(1, left) * 100} height="1" />
          </svg>
        </button>
      )}
    </div>
  )
}
