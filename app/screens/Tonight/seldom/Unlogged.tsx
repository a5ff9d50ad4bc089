/** Dose nights without an entry: one question, however many they are, and one touch for an answer. */
import { type ReactNode, useState } from 'react'
import { doNotKnow, type Fact, keptGoing, ok, stoppedFeeding, type TonightLine } from '../../../../core/index.ts'
import { Actions, Button, LinkButton } from '../../../parts/Actions.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import type { Ask } from '../../../state/store.ts'
import { allNights, askedWords, unloggedWords, yesWords } from '../../../words/nights.ts'
import type { Reading } from '../../useReading.ts'
import type { ActRefusal, Dosing } from '../useDosing.ts'
import { roundsOf } from './rounds.ts'
import { UnloggedCount } from './UnloggedCount.tsx'

type UnloggedProps = {
  /** Those with nights to ask about. */
  readonly lines: readonly TonightLine[]
  readonly reading: Reading
  readonly dosing: Dosing
}

/** One answer for all; where one tank was fed and another was not, they are asked apart. */
export const Unlogged = ({ lines, reading, dosing }: UnloggedProps) => {
  const [apart, setApart] = useState(false)
  if (!apart || lines.length < 2)
    return (
      <Question lines={lines} reading={reading} dosing={dosing}>
        {lines.length > 1 && <LinkButton onAct={() => setApart(true)}>Not the same for each</LinkButton>}
      </Question>
    )
  return lines.map((line) => <Question key={line.plan.plan} lines={[line]} reading={reading} dosing={dosing} />)
}

type QuestionProps = UnloggedProps & { readonly children?: ReactNode }

const Question = ({ lines, reading, dosing, children }: QuestionProps) => {
  const [counting, setCounting] = useState(false)
  const { world } = reading
  const [first] = lines
  if (!first) return null
  const rounds = roundsOf(lines)
  const nights = allNights(lines)
  const answer = (ask: Ask<ActRefusal>) => () => void dosing.record(ask, { did: 'answered' })
  const forgotten: Ask<ActRefusal> = (latest, { now }) => {
    const facts: Fact[] = []
    for (const { plan, nights: open } of rounds)
      for (const night of open) {
        const unknown = doNotKnow(latest, { plan, night }, now)
        if (!unknown.ok) return unknown
        facts.push(...unknown.value)
      }
    return ok(facts)
  }
  const foods = new Set(lines.map(({ food }) => food.food))
  const lots = [...world.lots.values()].filter(({ made, left }) => foods.has(made.food) && left > 0)
  const one = nights.length === 1
  const named = world.tanks.size > 1 || world.foods.size > 1
  // Two foods or tanks asked apart have the same answers, and so has tonight.
  const asked = <span className="for-ears">: {askedWords(lines, first.night, named)}</span>
  return (
    <Notice title={unloggedWords(lines, first.night, named)}>
      <Actions>
        <Button kind="quiet" waiting={dosing.busy} onAct={answer((latest, { now }) => keptGoing(latest, rounds, now))}>
          {one ? yesWords(nights[0] ?? first.night, first.night) : 'Kept going as usual'}
          {asked}
        </Button>
        <Button
          kind="quiet"
          waiting={dosing.busy}
          onAct={answer((latest, { now }) => stoppedFeeding(latest, rounds, now))}
        >
          {one ? 'Not dosed' : 'Stopped'}
          {asked}
        </Button>
        {one ? (
          <Button kind="quiet" waiting={dosing.busy} onAct={answer(forgotten)}>
            I can’t remember
            {asked}
          </Button>
        ) : (
          lots.length > 0 &&
          !counting && (
            <Button kind="quiet" onAct={() => setCounting(true)}>
              I’ll count what is left
              {asked}
            </Button>
          )
        )}
        {children}
      </Actions>
      {counting && (
        // A count begun before something was taken or put back is of another moment: it begins again.
        <UnloggedCount
          key={lots.map(({ left }) => left).join()}
          lines={lines}
          lots={lots}
          reading={reading}
          dosing={dosing}
        />
      )}
    </Notice>
  )
}
