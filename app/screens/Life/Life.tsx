/** The small life of one tank: since when, how many, which kinds, and then what. */
import {
  type CountSeries,
  countSeries,
  feedingsSince,
  kindsSeen,
  type PhotoGroup,
  type PhotoKept,
  photosOfTank,
  podEaters,
  poursOf,
  reseedNow,
  type Stamp,
  sinceThePour,
  type TankDescribed,
} from '../../../core/index.ts'
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { dayWords } from '../../words/dates.ts'
import { answerWithoutPour, podEatersWords, pourWords, reseedWords, sinceWords } from '../../words/life.ts'
import { allPhotosWords } from '../../words/photos.ts'
import { AddPhoto } from '../Photos/AddPhoto.tsx'
import { PhotosOf } from '../Photos/PhotosOf.tsx'
import { SaidAndUndo, type SaidDone } from '../SaidAndUndo.tsx'
import { Counts } from './Counts.tsx'
import { Kinds } from './Kinds.tsx'
import { useTankReading } from './useTankReading.ts'

type LifeProps = {
  readonly tank: TankDescribed
  readonly kept: SaidDone | undefined
  readonly onUndone: () => void
}

export const Life = ({ tank, kept, onUndone }: LifeProps) => {
  const reading = useTankReading(tank)
  const { world, now, today } = reading
  const id = tank.tank
  const series = countSeries(world, id)
  const groups = photosOfTank(world, id, now)
  const photos = groups.flatMap((group) => group.photos)
  const kinds = kindsSeen(world, id)
  const pours = poursOf(world, id, now)
  const since = sinceThePour(world, id, now)
  const begin = [...series.flatMap(({ points }) => points.map(({ fact }) => fact.night)), ...pours.map((p) => p.night)]
  const [first] = begin.toSorted()
  const feedings = first ? feedingsSince(world, id, first) : []
  const counted = series.reduce((sum, { points }) => sum + points.length, 0)
  const about = kept?.written.find(({ fact }) => fact.kind === 'smallLifeCounted' || fact.kind === 'kindSeen')
  const to = (where: string) => `#/water/${id}/life/${where}`
  return (
    <Page
      title="The small life"
      when={tank.name}
      answer={since ? sinceWords(since) : answerWithoutPour(counted, kinds.length)}
    >
      <div>
        <SaidAndUndo said={kept} reading={reading} onUndone={onUndone} />
        {about && (
          <AddPhoto
            key={about.id}
            of={{ entry: about.id }}
            like={likeOf(groups, about.id, series)}
            label="A photo of it"
            reading={reading}
          />
        )}
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
          photos={photos}
          reading={reading}
        />
      ))}
      {kinds.length > 0 && (
        <Section title="Kinds seen">
          <Kinds kinds={kinds} photos={groups} reading={reading} addTo />
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
      <Section title="Photos">
        {photos.length > 0 && (
          <p>
            <a href={to('photos')}>
              {`${photos.length === 1 ? 'The photo' : allPhotosWords(photos.length)}${groups.some((group) => group.photos.length > 1) ? ', then and now side by side' : ''}`}
            </a>
          </p>
        )}
        <PhotosOf of={{ tank: id }} about={tank.name} reading={reading} />
      </Section>
      {counted + kinds.length + pours.length + photos.length > 0 && (
        <Actions>
          <ButtonLink kind="quiet" href={to('page')}>
            All of it on one page
          </ButtonLink>
        </Actions>
      )}
    </Page>
  )
}

/** The last photo of the same spot, the same pane held in the same frame. */
const likeOf = (groups: readonly PhotoGroup[], entry: Stamp, series: readonly CountSeries[]): PhotoKept | undefined => {
  const spot = series.find(({ points }) => points.some((point) => point.entry === entry))
  const group = groups.find((each) => each.shows === 'spot' && each.series.key === spot?.key)
  return group?.photos.findLast(({ fact }) => !('entry' in fact.of && fact.of.entry === entry))?.fact
}
