/** All of it on one page, to show or to print: pours, feedings and their cost, counts as they were taken, kinds, photos. */
import '../Food/paper/paper.css'
import {
  countSeries,
  feedingsSince,
  kindsSeen,
  photosOfTank,
  poursOf,
  sinceThePour,
  type TankDescribed,
  wallDay,
} from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Facts } from '../../parts/Facts.tsx'
import { Page } from '../../parts/Page.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { clock, dayInFull } from '../../words/dates.ts'
import { answerWithoutPour, densityShort, perWords, pourWords, seriesTitle, sinceWords } from '../../words/life.ts'
import { list } from '../../words/list.ts'
import { capital, number } from '../../words/numbers.ts'
import { usePictures, whereHere } from '../Photos/usePictures.ts'
import { CountChart } from './CountChart.tsx'
import { Kinds } from './Kinds.tsx'
import { PageFood } from './PageFood.tsx'
import { ChoosePhotos, PagePhotos } from './PagePhotos.tsx'
import { useTankReading } from './useTankReading.ts'

export const LifePage = ({ tank }: { readonly tank: TankDescribed }) => {
  const reading = useTankReading(tank)
  const { world, now, today } = reading
  const series = countSeries(world, tank.tank)
  const kinds = kindsSeen(world, tank.tank)
  const pictures = usePictures()
  // What is on another phone cannot be shown.
  const groups = photosOfTank(world, tank.tank, now)
    .map((group) => ({ ...group, photos: whereHere(group.photos, pictures) }))
    .filter(({ photos }) => photos.length > 0)
  const { fields, change } = useDraft(`life/page/${tank.tank}`, { photos: null as readonly string[] | null })
  const pours = poursOf(world, tank.tank, now)
  const since = sinceThePour(world, tank.tank, now)
  const first = since?.first.night ?? series.flatMap(({ points }) => points.map(({ fact }) => fact.night)).toSorted()[0]
  const feedings = first ? feedingsSince(world, tank.tank, first) : []
  const counted = series.reduce((sum, { points }) => sum + points.length, 0)
  return (
    <Page title="The small life on one page" when={tank.name} answer="To show, or to print.">
      <Actions>
        <Button onAct={() => window.print()}>Print</Button>
      </Actions>
      {groups.length > 0 && (
        <ChoosePhotos
          groups={groups}
          chosen={fields.photos}
          reading={reading}
          onChange={(photos) => change({ photos })}
        />
      )}
      <article className="paper life-page">
        <h2>{`The small life of ${tank.name}, ${dayInFull(today)}`}</h2>
        <p>{since ? sinceWords(since) : answerWithoutPour(counted, kinds.length)}</p>
        {pours.length > 0 && (
          <>
            <h3>Poured</h3>
            <ul>
              {pours.map((pour) => (
                <li key={pour.at}>{`${dayInFull(pour.night)}. ${pourWords(pour)}`}</li>
              ))}
            </ul>
          </>
        )}
        <PagePhotos groups={groups} chosen={fields.photos} reading={reading} />
        <PageFood tank={tank} reading={reading} since={first ?? today} feedings={feedings} />
        {series.map((each) => (
          <section key={each.key}>
            <h3>{seriesTitle(each)}</h3>
            {each.points.length > 1 && (
              <CountChart series={each} pours={pours.map(({ night }) => night)} feedings={feedings} today={today} />
            )}
            <Facts
              facts={each.points.map(({ fact, density }) => ({
                term: `${dayInFull(wallDay(fact.at, reading.zone))}, ${clock(fact.at, reading.zone)}`,
                fact: `${densityShort(density)} ${perWords[each.per]}`,
                note: `${capital(list(fact.counts.map(number)))} counted${fact.words ? `. ${fact.words}` : ''}`,
              }))}
            />
          </section>
        ))}
        {kinds.length > 0 && (
          <>
            <h3>Kinds seen</h3>
            <Kinds kinds={kinds} photos={groups} reading={reading} />
          </>
        )}
        <p className="life-quiet">
          In brackets the range that holds the truth nineteen times in twenty, by the count alone. In a jar every figure
          is a least one, for a sieve lets some through, unless the share it keeps is known.
        </p>
      </article>
    </Page>
  )
}
