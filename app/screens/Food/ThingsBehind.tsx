/** Each thing behind a door in a line, with the way to it: that is where it is moved. */
import { liquidLeft, portionsLeft, type Shelf } from '../../../core/index.ts'
import { Line, Lines } from '../../parts/Lines.tsx'
import { bottleName } from '../../words/names.ts'
import { capital, millilitres, portions } from '../../words/numbers.ts'
import { useReading } from '../useReading.ts'

export const ThingsBehind = ({ shelf }: { readonly shelf: Shelf }) => {
  const { world, now } = useReading()
  const bottles = [...shelf.bottles.map(({ bottle }) => bottle), ...shelf.unknown.bottles]
  const lots = [...shelf.lots.map(({ lot }) => lot), ...shelf.unknown.lots]
  return (
    <Lines>
      {bottles.map((bottle) => (
        <Line key={bottle.id} end={millilitres(liquidLeft(bottle))}>
          <a className="kind-link" href={`#/food/bottle/${bottle.id}`}>
            {capital(bottleName(world, bottle.id, now))}
          </a>
        </Line>
      ))}
      {lots.map((lot) => (
        <Line key={lot.id} end={portions(portionsLeft(lot))}>
          <a className="kind-link" href={`#/food/lot/${lot.id}`}>
            {lot.made.mark}
          </a>
        </Line>
      ))}
    </Lines>
  )
}
