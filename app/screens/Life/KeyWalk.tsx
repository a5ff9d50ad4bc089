/** "What is this?" as a walk: one question a screen, back as often as wanted, to one next step. */
import { useEffect, useRef, useState } from 'react'
import {
  answerKey,
  backInKey,
  type KeyGiven,
  type KeyMark,
  keyPlace,
  type Moment,
  recordKind,
  type TankDescribed,
  type TickQuestion,
} from '../../../core/index.ts'
import { Actions, Button, LinkButton } from '../../parts/Actions.tsx'
import { Animal } from '../../parts/animals/Animal.tsx'
import { animalDrawing, answerDrawing, markDrawing } from '../../parts/animals/keyDrawings.ts'
import { Form } from '../../parts/Form.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { Tick } from '../../parts/Tick.tsx'
import { useDraft } from '../../state/useDraft.ts'
import {
  answerWords,
  foundWords,
  keyRefusalText,
  keyWords,
  markWords,
  questionWords,
  verdictWords,
} from '../../words/key.ts'
import { capital } from '../../words/numbers.ts'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { AboutFields } from './AboutFields.tsx'
import { type AboutFields as About, inFields, noAbout, whenOf } from './lifeFields.ts'
import type { OnKept } from './rooms.tsx'
import { useLifeForm } from './useLifeForm.ts'

type KeyFields = About & { readonly given: readonly KeyGiven[]; readonly ticked: readonly KeyMark[] }
const newKey: KeyFields = { ...noAbout, given: [], ticked: [] }

export const KeyWalk = ({ tank, onKept }: { readonly tank: TankDescribed; readonly onKept: OnKept }) => {
  const reading = useReading()
  const form = useLifeForm()
  const [refused, setRefused] = useState<string>()
  const { fields, change: type, clear, restoredFrom } = useDraft<KeyFields>(`key/${tank.tank}`, newKey)
  const change = (changed: Partial<KeyFields>) => {
    form.reset()
    type(changed)
  }
  const walk = { given: fields.given }
  const place = keyPlace(walk)
  const give = (given: KeyGiven) => {
    const next = answerKey(walk, given)
    setRefused(next.ok ? undefined : keyRefusalText(next.refusal))
    if (next.ok) change({ given: next.value.given, ticked: [] })
  }
  // The button that answered is gone, and perhaps far down: the next question begins at its words, for eyes and for ears.
  const asked = useRef<HTMLSpanElement>(null)
  const step = place.at === 'found' ? place.found : place.question
  const shown = useRef(step)
  useEffect(() => {
    if (shown.current === step) return
    shown.current = step
    document.documentElement.scrollTop = 0
    asked.current?.focus({ preventScroll: true })
  }, [step])
  const heading = (says: string) => (
    <span ref={asked} tabIndex={-1}>
      {says}
    </span>
  )
  const back = walk.given.length > 0 && (
    <LinkButton onAct={() => change({ given: backInKey(walk).given })}>{keyWords.back}</LinkButton>
  )
  const keep = async () => {
    const written = await form.send((world, { now }) => {
      const { where, words } = fields
      const at: Moment = whenOf(fields, tank, now)
      const done = recordKind(world, { tank: tank.tank, at, walk, where, words }, now)
      if (done.ok) return done
      const { refusal } = done
      const field = refusal.why === 'notYet' ? 'clock' : refusal.why === 'wordsTooLong' ? refusal.of : ''
      return inFields({ [field]: refusal })
    })
    if (!written) return
    await clear()
    onKept('What you saw is kept.', written)
  }
  if (place.at !== 'found') {
    const { asks, look } = questionWords[place.question]
    return (
      <Page title={keyWords.title} when={tank.name} answer={heading(asks)}>
        <Unfinished since={restoredFrom} zone={reading.zone} today={reading.today} onFresh={() => void clear()} />
        <p>{look ?? keyWords.how}</p>
        {refused && <Notice kind="refusal">{refused}</Notice>}
        {place.at === 'choice' ? (
          <ul className="key-answers">
            {place.answers.map((answer) => {
              const drawing = answerDrawing[answer]
              return (
                <li key={answer}>
                  <button
                    type="button"
                    className="key-answer"
                    onClick={() => give({ question: place.question, answer })}
                  >
                    <span>{answerWords[answer]}</span>
                    {drawing && <Animal of={drawing} />}
                  </button>
                </li>
              )
            })}
          </ul>
        ) : (
          <Ticks
            question={place.question}
            offered={place.offered}
            ticked={fields.ticked}
            onTicked={(ticked) => change({ ticked })}
            onGive={give}
          />
        )}
        {back}
      </Page>
    )
  }
  const { name, says, next } = foundWords[place.found]
  const drawing = place.found in animalDrawing ? animalDrawing[place.found as keyof typeof animalDrawing] : undefined
  return (
    <Page title={keyWords.title} when={tank.name} answer={heading(`${verdictWords[place.verdict]}. ${name}.`)}>
      {drawing && <Animal of={drawing} size="large" />}
      <p>{says}</p>
      <Section title="Next">
        <p>{next}</p>
        {place.verdict !== 'harmless' && <p>{keyWords.never}</p>}
      </Section>
      {place.marks.length > 0 && (
        <Section title={keyWords.seen}>
          <ul className="key-marks">
            {place.marks.map((mark) => (
              <li key={mark}>{capital(markWords[mark])}</li>
            ))}
          </ul>
        </Section>
      )}
      <Section title="Keep it in the diary">
        <Form onSend={keep}>
          <AboutFields
            tank={tank}
            fields={fields}
            onChange={change}
            form={form}
            whereLabel="Where was it?"
            whereHint="May be left empty."
          />
          {form.wrong('') && <Notice kind="refusal">{form.wrong('')}</Notice>}
          <Actions>
            <Button submit waiting={form.busy}>
              Keep it
            </Button>
            <LinkButton onAct={() => void clear()}>Another animal</LinkButton>
          </Actions>
        </Form>
      </Section>
      {back}
    </Page>
  )
}

type TicksProps = {
  readonly question: TickQuestion
  readonly offered: readonly KeyMark[]
  readonly ticked: readonly KeyMark[]
  readonly onTicked: (ticked: readonly KeyMark[]) => void
  readonly onGive: (given: KeyGiven) => void
}
const Ticks = ({ question, offered, ticked, onTicked, onGive }: TicksProps) => (
  <>
    <ul className="key-answers">
      {offered.map((mark) => {
        const drawing = markDrawing[mark]
        const is = ticked.includes(mark)
        return (
          <li key={mark}>
            <button
              type="button"
              className="key-answer"
              aria-pressed={is}
              onClick={() => onTicked(is ? ticked.filter((each) => each !== mark) : [...ticked, mark])}
            >
              <span>
                {is && <Tick />} {capital(markWords[mark])}
              </span>
              {drawing && <Animal of={drawing} />}
            </button>
          </li>
        )
      })}
    </ul>
    <Actions>
      <Button onAct={() => onGive({ question, ticked })}>
        {ticked.length === 0 ? 'None of these, or I cannot tell' : 'That is what I saw'}
      </Button>
    </Actions>
  </>
)
