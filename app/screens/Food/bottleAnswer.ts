/** Until when a bottle would be good, told while its form is being filled. */
import { type Day, lastGoodInFridge, readSize, recordBottle } from '../../../core/index.ts'
import { dayWords } from '../../words/dates.ts'
import { hereIn, type Reading } from '../useReading.ts'
import type { BottleFields } from './bottleFields.ts'
import { readBottle } from './readBottle.ts'

/** Name and size change nothing about the day: whoever has not come to them yet hears it all the same. */
const eased = (fields: BottleFields): BottleFields => ({
  ...fields,
  foodName: fields.foodName.trim() || '?',
  placeName: fields.placeName.trim() || '?',
  size: readSize(fields.size, fields.unit).ok ? fields.size : '1',
  fullness: 'full',
  paid: 'notKnown',
})

export const bottleAnswer = (fields: BottleFields, { world, now, today }: Reading): string => {
  const read = readBottle(eased(fields), world, now)
  if (!read.ok) return 'When did it come, and when was it opened?'
  const { state, asked, food } = read.value
  const recorded = recordBottle(state, asked, hereIn(world, now))
  if (!recorded.ok) return 'When did it come, and when was it opened?'
  const lastGood = lastGoodInFridge(recorded.value[0], food)
  if (!lastGood) return 'No date is known for it: its life starts when it is opened.'
  return untilWords(lastGood, food.freezerLife !== undefined, recorded.value[0].openedOn === undefined, today)
}

const untilWords = (lastGood: Day, mayBeFrozen: boolean, sealed: boolean, today: Day): string => {
  const until = dayWords(lastGood, today)
  if (lastGood < today) return `Past its day since ${until}. It goes on record as it is.`
  const good = sealed ? `Good unopened until ${until}` : `Good in the fridge until ${until}`
  return mayBeFrozen ? `${good}: freeze by then what won’t be used.` : `${good}.`
}
