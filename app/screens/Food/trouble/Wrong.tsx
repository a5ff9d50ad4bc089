/** Something went wrong: which of it, and one touch to where it is seen to. */
import { placesAt, portionsLeft } from '../../../../core/index.ts'
import { Line, Lines } from '../../../parts/Lines.tsx'
import { Page } from '../../../parts/Page.tsx'
import { Section } from '../../../parts/Section.tsx'
import { bottleName, doors } from '../../../words/names.ts'
import { capital, portions } from '../../../words/numbers.ts'
import { useReading } from '../../useReading.ts'

export const Wrong = () => {
  const { world, now } = useReading()
  const lots = [...world.lots.values()].filter(({ left }) => left > 0)
  const bottles = [...world.bottles.values()].filter(({ finished, left }) => !finished && left > 0)
  return (
    <Page title="Something went wrong" answer="Which of it? Nothing is thrown away for you.">
      <nav className="ways" aria-label="What went wrong">
        {placesAt(world, now).map(({ place, name, door }) => (
          <a key={place} href={`#/food/place/${place}/thaw`}>
            {capital(name)}: {door === 'freezer' ? 'off, open or thawed' : `too warm, or so cold that a bottle froze`}
            <span className="for-ears"> ({doors[door]})</span>
          </a>
        ))}
        <a href="#/food/too-much">Far too much went into a tank</a>
        <a href="#/food/lot/unlabelled">A bag has lost its label</a>
      </nav>
      {bottles.length + lots.length > 0 && (
        <Section title="It smells or looks wrong, or there is less than the book says">
          <Lines>
            {bottles.map((bottle) => (
              <Thing
                key={bottle.id}
                href={`#/food/bottle/${bottle.id}`}
                name={capital(bottleName(world, bottle.id, now))}
              />
            ))}
            {lots.map((lot) => (
              <Thing
                key={lot.id}
                href={`#/food/lot/${lot.id}`}
                name={`${lot.made.mark}, ${portions(portionsLeft(lot))}`}
              />
            ))}
          </Lines>
        </Section>
      )}
    </Page>
  )
}

const Thing = ({ href, name }: { readonly href: string; readonly name: string }) => (
  <Line>
    {name}
    <div className="actions">
      <a href={`${href}/smell`}>
        Smell and look<span className="for-ears">: {name}</span>
      </a>
      <a href={href}>
        Count or measure<span className="for-ears">: {name}</span>
      </a>
    </div>
  </Line>
)
