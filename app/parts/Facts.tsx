/** Facts in two columns with leader dots, as an almanac's tables have them. */
import '../styles/telling.css'
import type { ReactNode } from 'react'

export type Fact = {
  readonly term: string
  readonly fact: ReactNode
  readonly note?: ReactNode
}

export const Facts = ({ facts }: { readonly facts: readonly Fact[] }) => (
  <dl className="facts">
    {facts.map(({ term, fact, note }) => (
      <div className="fact" key={term}>
        <dt>{term}</dt>
        <dd>{fact}</dd>
        {note && <dd className="fact-note">{note}</dd>}
      </div>
    ))}
  </dl>
)
