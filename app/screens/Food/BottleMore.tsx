/** A bottle's days, its price and its place. */
import { isDay } from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { DayField } from '../../parts/DayField.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { dayEcho, dayWords } from '../../words/dates.ts'
import { printedWords } from '../../words/food.ts'
import { useReading } from '../useReading.ts'
import { BottlePrice } from './BottlePrice.tsx'
import type { BottleQuestionsProps } from './BottleQuestions.tsx'
import type { BottleFields } from './bottleFields.ts'
import { PlaceField } from './PlaceField.tsx'
import { foodsOffered } from './pick.ts'

/** Said on the closed fold, so that nobody opens it only to see that all is well. */
const summary = ({ receivedOn, seal, openedOn }: BottleFields, today: Parameters<typeof dayWords>[1]): string => {
  const word = (typed: string) => (typed === today ? 'today' : isDay(typed) ? dayWords(typed, today) : 'not known')
  return `Came ${word(receivedOn)}, ${seal === 'sealed' ? 'still sealed' : `opened ${word(openedOn)}`}. Dates, price, place`
}

/** A slip of the year shows here; old stock is sold too, and is only told. */
const printedEcho = ({ useBy, receivedOn }: BottleFields): string | undefined => {
  const day = dayEcho(useBy)
  const says = isDay(useBy) && isDay(receivedOn) ? printedWords(useBy, receivedOn) : undefined
  return says ? `${day}: ${says}.` : day
}

export const BottleMore = ({ fields, change, act, mending = false, priceFirst = false }: BottleQuestionsProps) => {
  const { world, now, today } = useReading()
  const food = foodsOffered(world, fields.food, now).find((known) => known.food === fields.food)
  const standing = mending ? world.bottles.get(fields.bottle) : undefined
  const wrong = ['receivedOn', 'openedOn', 'bottledOn', 'useBy', 'price', 'currency', 'placeName'].some(act.wrong)
  return (
    <MoreExact label={summary(fields, today)} open={mending || wrong}>
      <DayField
        label="Came on"
        hint="Leave it empty if you don’t know."
        value={fields.receivedOn}
        latest={today}
        echo={dayEcho(fields.receivedOn)}
        error={act.wrong('receivedOn')}
        onChange={(receivedOn) => change({ receivedOn })}
      />
      <Choice
        label="Is it open?"
        options={[
          { value: 'opened', label: 'Opened' },
          { value: 'sealed', label: 'Still sealed' },
        ]}
        value={fields.seal}
        onChange={(seal) => change({ seal })}
      />
      {fields.seal === 'opened' && (
        <DayField
          label="Opened on"
          value={fields.openedOn}
          latest={today}
          echo={dayEcho(fields.openedOn)}
          error={act.wrong('openedOn')}
          onChange={(openedOn) => change({ openedOn })}
        />
      )}
      {(food?.countsFrom === 'bottling' || fields.bottledOn !== '') && (
        <DayField
          label="Bottled on"
          hint="Its life in the fridge counts from this day."
          value={fields.bottledOn}
          latest={today}
          echo={dayEcho(fields.bottledOn)}
          error={act.wrong('bottledOn')}
          onChange={(bottledOn) => change({ bottledOn })}
        />
      )}
      <DayField
        label="Use-by date printed on it"
        hint="If there is one. The earlier day wins."
        value={fields.useBy}
        echo={printedEcho(fields)}
        error={act.wrong('useBy')}
        onChange={(useBy) => change({ useBy })}
      />
      <BottlePrice fields={fields} change={change} act={act} begin={priceFirst} />
      {/* Moved since, it stands where the move says, whatever the first entry said. */}
      {standing?.place === standing?.recorded.place && (
        <PlaceField door="fridge" fields={fields} onChange={change} act={act} />
      )}
    </MoreExact>
  )
}
