/** Every photo of a tank, those of the same thing together: the first and the last of them side by side. */
import { photosOfTank, type TankDescribed } from '../../../core/index.ts'
import { Empty } from '../../parts/Empty.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { capital } from '../../words/numbers.ts'
import { allPhotosWords, groupTitle, photosWords } from '../../words/photos.ts'
import { SideBySide } from '../Photos/SideBySide.tsx'
import { Thumbs } from '../Photos/Thumbs.tsx'
import { useTankReading } from './useTankReading.ts'

export const LifePhotos = ({ tank }: { readonly tank: TankDescribed }) => {
  const reading = useTankReading(tank)
  const groups = photosOfTank(reading.world, tank.tank, reading.now)
  const count = groups.reduce((sum, { photos }) => sum + photos.length, 0)
  return (
    <Page
      title="Photos"
      when={tank.name}
      answer={count === 0 ? 'No photo is kept yet.' : `${capital(photosWords(count))} of what lives here.`}
    >
      {count === 0 && (
        <Empty says="A photo is added where something is counted, recognised or poured.">
          <a href={`#/water/${tank.tank}/life`}>To the small life</a>
        </Empty>
      )}
      {groups.map((group) => (
        <Section key={group.key} title={groupTitle(group)}>
          {group.photos.length > 1 ? (
            <>
              <SideBySide tank={tank.tank} group={group} reading={reading} />
              <MoreExact label={allPhotosWords(group.photos.length)} of={groupTitle(group)}>
                <Thumbs photos={group.photos} reading={reading} />
              </MoreExact>
            </>
          ) : (
            <Thumbs photos={group.photos} reading={reading} />
          )}
        </Section>
      ))}
    </Page>
  )
}
