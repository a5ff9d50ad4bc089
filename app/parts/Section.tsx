/** A headed stretch of a page, with a hairline after its heading. */
import '../styles/page.css'
import { type ReactNode, useId } from 'react'

export const Section = ({ title, children }: { readonly title: string; readonly children: ReactNode }) => {
  const id = useId()
  return (
    <section className="section" aria-labelledby={id}>
      <h2 className="section-title" id={id}>
        {title}
      </h2>
      {children}
    </section>
  )
}
