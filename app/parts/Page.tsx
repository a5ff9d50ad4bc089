/** One screen: a running head, the sentence that answers the job, and what hangs under it. */
import '../styles/page.css'
import { type ReactNode, useEffect, useRef } from 'react'

type PageProps = {
  readonly title: string
  /** Set in italics at the other end of the running head: a night, a date. */
  readonly when?: string | undefined
  readonly answer?: ReactNode
  readonly children?: ReactNode
  /** Notes beside the column at a desk, below it on a phone. */
  readonly margin?: ReactNode
  /** The act under the thumb: a Dock. */
  readonly dock?: ReactNode
}

/** Whether the page the app opens with has been shown. */
let opened = false

export const Page = ({ title, when, answer, children, margin, dock }: PageProps) => {
  const heading = useRef<HTMLHeadingElement>(null)
  // A link to another room leaves focus on nothing: the new page begins at its heading, for eyes and for ears. The page the
  // app opens with stands at its beginning anyway, and moving the focus lays all of it out before a touch can be heard.
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new title is a new page, even in the same component
  useEffect(() => {
    if (!opened) {
      opened = true
      return
    }
    document.documentElement.scrollTop = 0
    heading.current?.focus({ preventScroll: true })
  }, [title])

  return (
    <div className="page" data-margin={margin ? '' : undefined}>
      <title>{`${title} · Smallhours`}</title>
      <header className="page-head">
        <div className="page-running">
          <h1 className="page-title" ref={heading} tabIndex={-1}>
            {title}
          </h1>
          {when && <p className="page-when">{when}</p>}
        </div>
        {answer && <p className="page-answer">{answer}</p>}
      </header>
      <div className="page-body">{children}</div>
      {margin && <aside className="page-margin">{margin}</aside>}
      {dock}
    </div>
  )
}
