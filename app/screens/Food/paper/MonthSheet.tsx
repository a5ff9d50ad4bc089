/** A month on paper: one page that runs the round without a phone. */
import './paper.css'
import { type Month, monthsAhead, nightsAhead, shakes } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { Choice } from '../../../parts/Choice.tsx'
import { Page } from '../../../parts/Page.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import {
  asItStoodWords,
  cautionLine,
  lossesHint,
  lossesTitle,
  monthAnswer,
  neverLines,
  shakeLines,
  stretchWords,
} from '../../../words/paper.ts'
import { useReading } from '../../useReading.ts'
import { MonthTank } from './MonthTank.tsx'

const blankLines = ['first', 'second', 'third', 'fourth']

export const MonthSheet = () => {
  const reading = useReading()
  const { world, now, today } = reading
  const months = monthsAhead(today)
  const first: { readonly which: 'this' | 'next' | undefined } = { which: undefined }
  const { fields, change } = useDraft('monthOnPaper', first)
  const which = fields.which ?? months.usual
  const month: Month = months[which]
  const tanks = nightsAhead(world, month, now)
  const planned = tanks.some(({ rounds }) => rounds.length > 0)
  return (
    <Page title="A month on paper" answer={monthAnswer(tanks, month)}>
      {!planned ? (
        <p>
          <a href={tanks.length === 0 ? '#/water/tank/new' : '#/water'}>
            {tanks.length === 0 ? 'Put a tank on record' : 'Make a plan'}
          </a>
        </p>
      ) : (
        <>
          <Choice
            label="Which month?"
            options={[
              { value: 'this', label: stretchWords(months.this) },
              { value: 'next', label: stretchWords(months.next) },
            ]}
            value={which}
            onChange={(chosen) => change({ which: chosen })}
          />
          <Actions>
            <Button onAct={() => window.print()}>Print</Button>
          </Actions>
          <article className="paper month" aria-label={stretchWords(month)}>
            <h2 className="month-title">{stretchWords(month)}</h2>
            {tanks.map((tank) => (
              <MonthTank key={tank.tank.tank} of={tank} reading={reading} />
            ))}
            <ul className="month-rules">
              {neverLines.map((line) => (
                <li key={line}>{line}</li>
              ))}
              {shakeLines(shakes(world, now), world, now).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
            <p className="month-caution">{cautionLine}</p>
            <section className="month-losses">
              <h3>{lossesTitle}</h3>
              <p>{lossesHint}</p>
              {blankLines.map((line) => (
                <div className="month-blank" key={line} />
              ))}
            </section>
            <p className="month-stood">{asItStoodWords(today)}</p>
          </article>
        </>
      )}
    </Page>
  )
}
