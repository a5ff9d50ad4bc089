/** What does not add up, asked calmly, where it is seen. Nothing waits for an answer. */
import { useEffect, useRef, useState } from 'react'
import { LinkButton } from '../parts/Actions.tsx'
import { Section } from '../parts/Section.tsx'
import { number } from '../words/numbers.ts'
import { Question } from './Question.tsx'
import { useReading } from './useReading.ts'

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
      {oddities.slice(0, most).map((oddity) => (
        <Question key={oddity.key} oddity={oddity} reading={reading} onSettled={() => setSettled(settled + 1)} />
      ))}
      {more > 0 && (
        <LinkButton onAct={() => setMost(most + 10)}>
          {more === 1 ? 'One more question' : `${number(more)} more questions`}
        </LinkButton>
      )}
    </Section>
  )
}
