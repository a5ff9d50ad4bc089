/** One spot, counted in one way: what the last count says, the picture, and every count in words. */
import { useState } from 'react'
import { type CountPoint, type CountSeries, type Day, type PhotoNoted, wallDay } from '../../../core/index.ts'
import { LinkButton } from '../../parts/Actions.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Section } from '../../parts/Section.tsx'
import {
  changeWords,
  clumpedWords,
  densityWords,
  everyCount,
  momentWords,
  pointWords,
  seriesTitle,
} from '../../words/life.ts'
import { CrossOut } from '../Diary/CrossOut.tsx'
import { PhotosOf } from '../Photos/PhotosOf.tsx'
import type { Reading } from '../useReading.ts'
import { CountChart } from './CountChart.tsx'

type CountsProps = {
  readonly series: CountSeries
  readonly pours: readonly Day[]
  readonly feedings: readonly Day[]
  readonly photos: readonly PhotoNoted[]
  readonly reading: Reading
}

export const Counts = ({ series, pours, feedings, photos, reading }: CountsProps) => (
  <Section title={seriesTitle(series)}>
    <p>{densityWords(series.last.density, series)}</p>
    {series.last.density.is === 'about' && series.last.density.clumped && <p>{clumpedWords}</p>}
    {series.previous && <p>{changeWords(series.previous, reading.today)}</p>}
    {series.first && <p>{changeWords(series.first, reading.today)}</p>}
    {series.points.length > 1 && <CountChart series={series} pours={pours} feedings={feedings} today={reading.today} />}
    <MoreExact label={everyCount(series.points.length)} of={seriesTitle(series)}>
      <Lines>
        {series.points.toReversed().map((point) => (
          <CountLine
            key={point.entry}
            point={point}
            series={series}
            photos={photos.filter(({ fact }) => 'entry' in fact.of && fact.of.entry === point.entry)}
            reading={reading}
          />
        ))}
      </Lines>
    </MoreExact>
  </Section>
)

type CountLineProps = {
  readonly point: CountPoint
  readonly series: CountSeries
  readonly photos: readonly PhotoNoted[]
  readonly reading: Reading
}
const CountLine = ({ point, series, photos, reading }: CountLineProps) => {
  const [crossing, setCrossing] = useState(false)
  const { fact, entry } = point
  const when = momentWords(fact, wallDay(fact.at, reading.zone), reading)
  return (
    <Line
      lead={when}
      below={
        crossing ? (
          <CrossOut entry={{ id: entry, fact }} reading={reading} onClose={() => setCrossing(false)} />
        ) : (
          <>
            <PhotosOf of={{ entry }} photos={photos} about={when} reading={reading} />
            <LinkButton onAct={() => setCrossing(true)}>
              Cross out<span className="for-ears">: {when}</span>
            </LinkButton>
          </>
        )
      }
    >
      {pointWords(point, series).join(' ')}
    </Line>
  )
}
