/** What can be done here: one primary act, quiet ones beside it, and acts that read like links. */
import '../styles/buttons.css'
import type { ReactNode } from 'react'

export const Actions = ({ children }: { readonly children: ReactNode }) => <div className="actions">{children}</div>

type ButtonProps = {
  readonly children: ReactNode
  readonly onAct?: (() => void) | undefined
  readonly kind?: 'primary' | 'quiet'
  /** Sends the form it stands in. */
  readonly submit?: boolean
  /** At work or not yet possible: it keeps its focus and its place, and does nothing. */
  readonly waiting?: boolean
}

export const Button = ({ children, onAct, kind = 'primary', submit = false, waiting = false }: ButtonProps) => (
  <button
    type={submit ? 'submit' : 'button'}
    className="button"
    data-kind={kind}
    aria-disabled={waiting || undefined}
    onClick={(event) => {
      if (waiting) event.preventDefault()
      else onAct?.()
    }}
  >
    {children}
  </button>
)

export const LinkButton = ({ children, onAct }: { readonly children: ReactNode; readonly onAct: () => void }) => (
  <button type="button" className="link-button" onClick={onAct}>
    {children}
  </button>
)

type ButtonLinkProps = { readonly href: string; readonly kind?: 'primary' | 'quiet'; readonly children: ReactNode }

/** Goes somewhere, so it is a link; looks like the act it leads to. */
export const ButtonLink = ({ href, kind = 'primary', children }: ButtonLinkProps) => (
  <a className="button" data-kind={kind} href={href}>
    {children}
  </a>
)
