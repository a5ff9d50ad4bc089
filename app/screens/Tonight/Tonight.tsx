/** What is due tonight, one touch to say it is done, and the bottles to shake. */
import { lasts, tonight } from '../../../core/index.ts'
import { Page } from '../../parts/Page.tsx'
import { dayWords, nightWords } from '../../words/dates.ts'
import { lightsWords, sinceWords, tonightAnswer, unlikePlanWords } from '../../words/tonight.ts'
import { PleaseCheck } from '../PleaseCheck.tsx'
import { useReading } from '../useReading.ts'
import { Act } from './Act.tsx'
import { FridgeSoon } from './FridgeSoon.tsx'
import { NothingLeft } from './NothingLeft.tsx'
import { NothingPlanned } from './NothingPlanned.tsx'
import { OpenTray } from './OpenTray.tsx'
import { OtherLines } from './OtherLines.tsx'
import { Shaking } from './Shaking.tsx'
import { SomethingElse } from './SomethingElse.tsx'
import { useDosing } from './useDosing.ts'

export const Tonight = () => {
  const { world, now } = useReading()
  const lines = tonight(world, now)
  const dosing = useDosing()
  // A line just acted on stays in front, with its undo, until the undo has gone.
  const line = lines.find(({ plan }) => plan.plan === dosing.acted) ?? lines[0]
  if (!line) return <NothingPlanned />

  const serving = dosing.chosen(line)
  const due = line.state.is === 'due'
  // In the dark, with a wet thumb, there is one thing to touch; the rest can wait until it is done.
  const asleep = due && line.dark
  // A dose from the bottle wants it shaken first; other bottles can wait for the light.
  const shakeNow = !asleep || serving?.taken.from === 'bottle'
  return (
    <Page
      title="Tonight"
      when={`${nightWords(line.night)}, ${dayWords(line.night, line.night)}`}
      answer={tonightAnswer(
        { ...line, servings: serving ? [serving] : [] },
        world,
        now,
        lasts(world, line.food.food, now),
      )}
      dock={<Act line={line} serving={serving} dosing={dosing} />}
    >
      {line.state.is === 'due' && line.state.since && <p>{sinceWords(line.state.since, line.night)}</p>}
      {due && serving && <Unlike text={unlikePlanWords(serving, line.plan.amount)} />}
      {due && serving && <OpenTray serving={serving} world={world} />}
      {due && !serving && <NothingLeft line={line} />}
      {due && <p>{lightsWords(line)}</p>}
      {!asleep && <PleaseCheck />}
      <OtherLines lines={lines.filter((other) => other !== line)} world={world} now={now} />
      {shakeNow && <Shaking />}
      {!asleep && <FridgeSoon />}
      <SomethingElse line={line} serving={serving} dosing={dosing} />
    </Page>
  )
}

const Unlike = ({ text }: { readonly text: string | undefined }) => (text ? <p>{text}</p> : null)
