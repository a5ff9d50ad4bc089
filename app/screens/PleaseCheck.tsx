/** What does not add up, asked calmly, where it is seen. Nothing waits for an answer. */
import { lazy, Suspense, useEffect, useRef, useState } from 'react'
import { LinkButton } from '../parts/Actions.tsx'
import { Loading } from '../parts/Loading.tsx'
import { Section } from '../parts/Section.tsx'
import { loadPart } from '../state/leave.ts'
import { number } from '../words/numbers.ts'
import { useReading } from './useReading.ts'

// Most evenings have no question, and Tonight opens sooner without its words.
const Question = lazy(async () => ({ default: (await loadPart(() => import('./Question.tsx'))).Question }))

/** More at once would be a chore rather than a question. */
const atOnce = 2

export const PleaseCheck = () => {
  const reading = useReading()
  const [most, setMost] = useState(atOnce)
  const [settled, setSettled] = useState(0)
  const noted = useRef<HTMLOutputElement>(null)
  // The question has gone, and the focus with it: go on from where it stood.
  useEffect(() => {
    if (settled > 0) noted.current?.focus()
  }, [settled])
  const { oddities } = reading.world
  if (oddities.length === 0 && settled === 0) return null
  const more = oddities.length - most
  return (
    <Section title="Please check">
      <output className="question-noted" ref={noted} tabIndex={-1}>
        {settled > 0 && (oddities.length === 0 ? 'Noted. Nothing is left to check.' : 'Noted.')}
      </output>
      <Suspense fallback={<Loading says="One moment …" />}>
        {oddities.slice(0, most).map((oddity) => (
          <Question key={oddity.key} oddity={oddity} reading={reading} onSettled={() => setSettled(settled + 1)} />
        ))}
      </Suspense>
      {more > 0 && (
        <LinkButton onAct={() => setMost(most + 10)}>
          {more === 1 ? 'One more question' : `${number(more)} more questions`}
        </LinkButton>
      )}
    </Section>
  )
}
