/** What in the fridge will soon be past freezing, while there is still time. */
import { freezingWindow, stock } from '../../../core/index.ts'
import { Section } from '../../parts/Section.tsx'
import { bottleName } from '../../words/names.ts'
import { freezeSoonWords } from '../../words/tonight.ts'
import { useReading } from '../useReading.ts'

/** Days beforehand on which it is worth a line. Common practice, no source. */
const soonDays = 14

export const FridgeSoon = () => {
  const { world, now, today } = useReading()
  const soon = stock(world, now, today)
    .flatMap(({ bottles }) => bottles)
    .flatMap(({ bottle, food, usable }) => {
      const window = freezingWindow(bottle, food, today)
      return usable > 0 && window.is === 'open' && window.days <= soonDays ? [{ bottle, window }] : []
    })
  if (soon.length === 0) return null
  return (
    <Section title="In the fridge">
      {soon.map(({ bottle, window }) => (
        <p key={bottle.id}>
          {freezeSoonWords(bottle.id, window.until, window.days, world, now, today)}{' '}
          <a href={`#/food/bottle/${bottle.id}`}>
            Look at it<span className="for-ears">: {bottleName(world, bottle.id, now)}</span>
          </a>
        </p>
      ))}
    </Section>
  )
}
