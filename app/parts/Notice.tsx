/** Something to know. A caution is short and never in the way; only a refusal interrupts. */
import '../styles/telling.css'
import type { ReactNode } from 'react'

type Kind = 'note' | 'caution' | 'refusal'

type NoticeProps = {
  readonly kind?: Kind
  readonly title?: string | undefined
  readonly children: ReactNode
}

/** A pointing dot, a buoy's triangle, a barred circle: told apart without colour. */
const marks: Readonly<Record<Kind, string>> = {
  note: 'M10 8.5v7M10 4.3v1.2M4 18h12',
  caution: 'M10 2.5 18 17H2zM10 8v4.5M10 14.4v.6',
  refusal: 'M10 2a8 8 0 1 0 .01 0zM4.4 4.4l11.2 11.2',
}

export const Notice = ({ kind = 'note', title, children }: NoticeProps) => (
  <div className="notice" data-kind={kind} role={kind === 'refusal' ? 'alert' : 'note'}>
    <svg className="notice-mark" viewBox="0 0 20 20" aria-hidden="true">
      <path d={marks[kind]} />
    </svg>
    <div className="notice-body">
      {title && <p className="notice-title">{title}</p>}
      {typeof children === 'string' ? <p>{children}</p> : children}
    </div>
  </div>
)
