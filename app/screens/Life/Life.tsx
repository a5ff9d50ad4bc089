/** The small life of one tank: since when, how many, which kinds, and then what. */
import {
  countSeries,
  feedingsSince,
  kindsSeen,
  podEaters,
  poursOf,
  reseedNow,
  sinceThePour,
  type TankDescribed,
} from '../../../core/index.ts'
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { dayWords } from '../../words/dates.ts'
import { answerWithoutPour, podEatersWords, pourWords, reseedWords, sinceWords } from '../../words/life.ts'
import { SaidAndUndo } from '../Food/SaidAndUndo.tsx'
import { Counts } from './Counts.tsx'
import { Kinds } from './Kinds.tsx'
import type { Kept } from './rooms.tsx'
import { useTankReading } from './useTankReading.ts'

type LifeProps = {
  readonly tank: TankDescribed
  readonly kept: Kept | undefined
  readonly onUndone: () => void
}

export const Life = ({ tank, kept, onUndone }: LifeProps) => {
  const reading = useTankReading(tank)
  const { world, now, today } = reading
  const id = tank.tank
  const series = countSeries(world, id)
  const kinds = kindsSeen(world, id)
  const pours = poursOf(world, id, now)
  const since = sinceThePour(world, id, now)
  const begin = [...series.flatMap(({ points }) => points.map(({ fact }) => fact.night)), ...pours.map((p) => p.night)]
  const [first] = begin.toSorted()
  const feedings = first ? feedingsSince(world, id, first) : []
  const counted = series.reduce((sum, { points }) => sum + points.length, 0)
  const to = (where: string) => `#/water/${id}/life/${where}`
  return (
    <Page
      title="The small life"
      when={tank.name}
      answer={since ? sinceWords(since) : answerWithoutPour(counted, kinds.length)}
    >
      <div>
        <SaidAndUndo
          said={kept && { ...kept, wasFirst: false }}
          isFirst={false}
          because={undefined}
          reading={reading}
          onUndone={onUndone}
        />
      </div>
      <Actions>
        <ButtonLink href={to('torch')}>Count by torch</ButtonLink>
        <ButtonLink kind="quiet" href={to('pane')}>
          Pane by day
        </ButtonLink>
        <ButtonLink kind="quiet" href={to('jar')}>
          Jar through a sieve
        </ButtonLink>
        <ButtonLink kind="quiet" href={to('key')}>
          What is this bug?
        </ButtonLink>
      </Actions>
      {series.map((each) => (
        <Counts
          key={each.key}
          series={each}
          pours={pours.map(({ night }) => night)}
          feedings={feedings}
          reading={reading}
        />
      ))}
      {kinds.length > 0 && (
        <Section title="Kinds seen">
          <Kinds kinds={kinds} reading={reading} />
        </Section>
      )}
      <Section title="Then what">
        <h3 className="life-asks">Pour once more?</h3>
        {reseedWords(reseedNow(world, id, now), reading).map((says) => (
          <p key={says}>{says}</p>
        ))}
        <p>
          <a href={`#/seeding/${id}/plan`}>Plan a pour</a>
        </p>
        <h3 className="life-asks">May a fish come that eats pods?</h3>
        {podEatersWords(podEaters(world, id, now), reading).map((says) => (
          <p key={says}>{says}</p>
        ))}
      </Section>
      {pours.length > 0 && (
        <Section title="Poured">
          <Lines>
            {pours.toReversed().map((pour) => (
              <Line key={pour.at} lead={dayWords(pour.night, today)}>
                {pourWords(pour)}
              </Line>
            ))}
          </Lines>
        </Section>
      )}
      {counted + kinds.length + pours.length > 0 && (
        <Actions>
          <ButtonLink kind="quiet" href={to('page')}>
            All of it on one page
          </ButtonLink>
        </Actions>
      )}
    </Page>
  )
}
