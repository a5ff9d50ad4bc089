/** Refusals only the forms for food in doubt make, as sentences. */
import type {
  AsideRefusal,
  ContentsField,
  ContentsRefusal,
  FridgeRefusal,
  JoinRefusal,
  LetThawRefusal,
  RefreezeRefusal,
  SmellRefusal,
  ThawedMoveRefusal,
  ThawRefusal,
  UnlabelledRefusal,
} from '../../core/index.ts'
import { dayWords } from './dates.ts'
import { number, portions } from './numbers.ts'
import type { Reading } from './reading.ts'
import type { AnyRefusal } from './refusals.ts'

type All =
  | ThawRefusal
  | FridgeRefusal
  | LetThawRefusal
  | SmellRefusal
  | AsideRefusal
  | JoinRefusal
  | UnlabelledRefusal
  | RefreezeRefusal
  | ThawedMoveRefusal
  | ContentsRefusal
/** Those that have no words elsewhere. */
export type TroubleRefusal =
  | Exclude<All, { readonly why: AnyRefusal['why'] }>
  /** Bags or bottles of a door that nothing was said of yet. */
  | { readonly why: 'howFound' | 'goodOrNot' | 'whichBag' }

const contents: Record<ContentsField, string> = {
  dry: 'Dry matter is more than 0 and at most 2 g in a millilitre.',
  cells: 'Cells are more than 0 and at most 10,000,000 million in a millilitre.',
  cellPicograms: 'A cell weighs more than 0 and at most 1,000,000 pg dry.',
  nitrogen: 'Nitrogen is from 0 to 20 % of the dry matter.',
  phosphorus: 'Phosphorus is from 0 to 10 % of the dry matter.',
}

export const troubleText = (refusal: TroubleRefusal, { today }: Reading): string => {
  switch (refusal.why) {
    case 'nothingLookedAt':
    case 'howFound':
      return 'How was it found? “I can’t tell” is an answer too.'
    case 'goodOrNot':
      return 'Good, unsure or off?'
    case 'whichBag':
      return 'Into which bag?'
    case 'foundNotYet':
      return `${dayWords(refusal.day, today)} has not come yet.`
    case 'offOutOfRange':
      return `From a minute to ${number(refusal.mostHours)} hours. Leave it empty if you don’t know.`
    case 'notFrozen':
      return 'By the book this bottle is not frozen.'
    case 'howItSmelt':
      return 'In your own words: sharp, like the shore, like cut grass …'
    case 'asideAlready':
      return 'It is set aside already.'
    case 'notAside':
      return 'It is not set aside any more.'
    case 'sameBag':
      return 'That is the same bag.'
    case 'otherFood':
      return 'That bag holds another food.'
    case 'otherSize':
      return 'Portions of two sizes stay in two bags: nobody could count them as one.'
    case 'nothingToJoin':
      return 'There is nothing left in it to put into another bag.'
    case 'spoilsTheBag':
      return 'One of the two is set aside or has thawed. Put together, all of the bag is. Is it done already?'
    case 'whichFreezing':
      return 'Which of them may it be? All that come to mind.'
    case 'moreThanBagHas':
      return `By the book that bag has ${portions(refusal.left)}. Are they counted somewhere else, or in no bag?`
    case 'frozenAlready':
      return 'It is a block of ice: no portion can be measured out of it.'
    case 'thawedOnce':
      return 'What has thawed is not frozen again. It is good that night and the next.'
    case 'setAsideFirst':
      return 'It is set aside. Smell and look at it, and take it back into use, before any of it is frozen.'
    case 'thawedPortions':
      return `They thawed on ${dayWords(refusal.on, today)}: they are not frozen again, in no freezer. A fridge keeps them as well.`
    case 'contentsOutOfRange':
      return contents[refusal.which]
    case 'cellsUnweighed':
      return 'Cells in a millilitre, and what one weighs: either alone says nothing.'
  }
}
