/** The shelf of finished bottles: what each fed, what fell on the floor, what a dose came to. */
import { closing, doseCost, doseToFreeze, photosByBottle } from '../../../../core/index.ts'
import { Empty } from '../../../parts/Empty.tsx'
import { Line, Lines } from '../../../parts/Lines.tsx'
import { Page } from '../../../parts/Page.tsx'
import { fedNights, reachedWords } from '../../../words/closing.ts'
import { costWords } from '../../../words/food.ts'
import { bottleName } from '../../../words/names.ts'
import { capital, inWords, nights, portions } from '../../../words/numbers.ts'
import { Thumbs } from '../../Photos/Thumbs.tsx'
import { useReading } from '../../useReading.ts'
import { useAccounts } from '../useAccounts.ts'

const few = 50

export const Finished = () => {
  const reading = useReading()
  const { world, now, today } = reading
  const accounts = useAccounts()
  const photos = photosByBottle(world)
  const past = [...accounts.values()]
    .map((account) => {
      const { dose } = doseToFreeze(world, account.bottle.recorded.food, now)
      const closed = closing(world, account, dose, { now, today })
      return { account, closed, cost: () => doseCost(world, account, dose, { now, today }) }
    })
    .filter(({ closed }) => closed.closed)
    .reverse()
  const fed = past.reduce((sum, { closed }) => sum + closed.nights + closed.nightsCounted, 0)
  const answer =
    past.length === 0
      ? 'No bottle is finished yet.'
      : past.length === 1
        ? `One bottle finished: it fed ${nights(fed)}.`
        : `${capital(inWords(past.length))} bottles finished: together they fed ${nights(fed)}.`
  return (
    <Page title="Finished bottles" answer={answer}>
      {past.length === 0 ? (
        <Empty says="A bottle comes to stand here when nothing of it is left, in the fridge or the freezer.">
          <a className="kind-link" href="#/food">
            All the food there is
          </a>
        </Empty>
      ) : (
        <Lines>
          {past.slice(0, few).map(({ account: { bottle }, closed, cost }) => (
            <Line key={bottle.id}>
              <div className="past-bottle">
                <PastBottle reached={closed.reached} />
                <div>
                  <a className="kind-link" href={`#/food/bottle/${bottle.id}/closing`}>
                    {capital(bottleName(world, bottle.id, now))}
                  </a>
                  <p>
                    Fed {fedNights(closed)}; {costWords(cost())}.
                  </p>
                  <p className="past-facts">
                    {closed.portions.lost > 0 ? `${capital(portions(closed.portions.lost))} lost to the floor; ` : ''}
                    {reachedWords(closed.reached)} of it reached a tank.
                  </p>
                </div>
              </div>
              <Thumbs photos={photos.get(bottle.id) ?? []} reading={reading} />
            </Line>
          ))}
        </Lines>
      )}
      {past.length > few && <p>Older ones are in the diary.</p>}
    </Page>
  )
}

/** A bottle, inked as high as what reached a tank; the words beside it say the same. */
const PastBottle = ({ reached }: { readonly reached: number }) => {
  const height = 34 * reached
  return (
    <svg viewBox="0 0 26 52" aria-hidden="true">
      <rect className="reached" x="4" y={48 - height} width="18" height={height} />
      <path d="M9 2h8v6q0 3 3 4 3 1.500 3 5v29q0 3-3 3H6q-3 0-3-3V17q0-3.500 3-5 3-1 3-4zM8 5h10" />
    </svg>
  )
}
