/** What may be left alone: closed until someone wants it, and never in the way. */
import '../styles/choices.css'
import { type ReactNode, useEffect, useRef } from 'react'

type MoreExactProps = {
  readonly label: string
  /** What it is about, for ears: two of one label may stand on a page. */
  readonly of?: string | undefined
  /** Turning true opens it, where something inside is wrong. It is never closed for her: she may be typing in it. */
  readonly open?: boolean
  /** It was opened: what stands in it may be fetched now. */
  readonly onOpen?: () => void
  readonly children: ReactNode
}

export const MoreExact = ({ label, of, open = false, onOpen, children }: MoreExactProps) => {
  const fold = useRef<HTMLDetailsElement>(null)
  useEffect(() => {
    if (open && fold.current) fold.current.open = true
  }, [open])
  return (
    <details className="more" ref={fold} onToggle={({ currentTarget }) => currentTarget.open && onOpen?.()}>
      <summary>
        <svg className="more-mark" viewBox="0 0 10 10" aria-hidden="true">
          <path d="M3 1l4 4-4 4" />
        </svg>
        <span>
          {label}
          {of && <span className="for-ears">: {of}</span>}
        </span>
      </summary>
      <div className="more-body">{children}</div>
    </details>
  )
}
