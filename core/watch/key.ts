/** A walk through the key: one answer after another, back as often as wanted, to what it is or to "not sure". */
import { ok, type Result, refuse } from '../basis/result.ts'
import {
  type ChoiceQuestion,
  firstQuestion,
  type KeyAnimal,
  type KeyAnswer,
  type KeyChoice,
  type KeyFound,
  type KeyMark,
  type KeyQuestion,
  type KeyUnsure,
  type KeyVerdict,
  keyAnimals,
  keyChoices,
  type TickQuestion,
} from './keyTable.ts'

/** The answers given so far, in order. Plain, so that a draft can hold it. */
export type KeyWalk = { readonly given: readonly KeyGiven[] }
export type KeyGiven =
  | { readonly question: ChoiceQuestion; readonly answer: KeyAnswer }
  /** Every mark she saw. None is an answer too. */
  | { readonly question: TickQuestion; readonly ticked: readonly KeyMark[] }

export type KeyPlace = { readonly marks: readonly KeyMark[] } & (
  | { readonly at: 'choice'; readonly question: ChoiceQuestion; readonly answers: readonly KeyAnswer[] }
  | { readonly at: 'ticks'; readonly question: TickQuestion; readonly offered: readonly KeyMark[] }
  | { readonly at: 'found'; readonly found: KeyFound; readonly verdict: KeyVerdict }
)

export type KeyRefusal =
  | { readonly why: 'notAskedHere'; readonly question: KeyQuestion }
  | { readonly why: 'noSuchAnswer'; readonly question: KeyQuestion }

/** Nothing is called harmless on one mark. House rule. */
export const marksForHarmless = 2
/** One mark of the harmful kind forbids "harmless"; two are enough to trap it tonight. House rule. */
const marksForHarm = 2

export const beginKey = (): KeyWalk => ({ given: [] })

/** Refuses an answer to another question than the one it stands at, or one that is not offered there. */
export const answerKey = (walk: KeyWalk, given: KeyGiven): Result<KeyWalk, KeyRefusal> => {
  const place = keyPlace(walk)
  const { question } = given
  if (place.at === 'found' || place.question !== question) return refuse({ why: 'notAskedHere', question })
  return offers(place, given) ? ok({ given: [...answered(walk), given] }) : refuse({ why: 'noSuchAnswer', question })
}

/** One answer back. At the beginning it stays there. */
export const backInKey = (walk: KeyWalk): KeyWalk => ({ given: answered(walk).slice(0, -1) })

/**
 * Where the walk stands. An answer the key no longer knows, from a draft of an older app, and all after it are left out: it
 * is asked again.
 */
export const keyPlace = (walk: KeyWalk): KeyPlace => along(walk).place

const answered = (walk: KeyWalk): readonly KeyGiven[] => walk.given.slice(0, along(walk).steps)

const along = ({ given }: KeyWalk): { readonly place: KeyPlace; readonly steps: number } => {
  let place = asking(firstQuestion, [])
  let steps = 0
  for (const next of given) {
    if (place.at === 'found' || place.question !== next.question || !offers(place, next)) break
    place = after(place, next)
    steps += 1
  }
  return { place, steps }
}

const offers = (place: KeyPlace, given: KeyGiven): boolean =>
  'ticked' in given
    ? place.at === 'ticks' && given.ticked.every((mark) => place.offered.includes(mark))
    : place.at === 'choice' && place.answers.includes(given.answer)

const after = (place: KeyPlace, given: KeyGiven): KeyPlace => {
  if ('ticked' in given) {
    const marks = [...new Set([...place.marks, ...given.ticked])]
    return foundAt(woodlouse(marks), marks)
  }
  const { marks: seen, to } = keyChoices[given.question][given.answer] as KeyChoice
  const marks = [...place.marks, ...seen]
  return 'ask' in to ? asking(to.ask, marks) : foundAt(to.found, marks)
}

const asking = (question: KeyQuestion, marks: readonly KeyMark[]): KeyPlace =>
  question === 'woodlouseMarks'
    ? { at: 'ticks', question, marks, offered: [...keyAnimals.sphaeromatid.marks, ...keyAnimals.cirolanid.marks] }
    : { at: 'choice', question, marks, answers: Object.keys(keyChoices[question]) as KeyAnswer[] }

/** Whatever the table says: harmless is said on two marks of its own, or not at all. */
const foundAt = (found: KeyFound, marks: readonly KeyMark[]): KeyPlace => {
  if (!isAnimal(found)) return { at: 'found', found, verdict: 'unsure', marks }
  const { verdict } = keyAnimals[found]
  return verdict === 'harmless' && marksOf(found, marks) < marksForHarmless
    ? { at: 'found', found: 'unsure', verdict: 'unsure', marks }
    : { at: 'found', found, verdict, marks }
}

/** The two that are taken for each other. Where marks of both are seen, care goes before comfort. */
const woodlouse = (marks: readonly KeyMark[]): KeyAnimal | KeyUnsure => {
  const harm = marksOf('cirolanid', marks)
  if (harm >= marksForHarm) return 'cirolanid'
  return harm === 0 && marksOf('sphaeromatid', marks) >= marksForHarmless ? 'sphaeromatid' : 'unsureWoodlouse'
}

const marksOf = (animal: KeyAnimal, seen: readonly KeyMark[]): number =>
  keyAnimals[animal].marks.filter((mark) => seen.includes(mark)).length
/** What was found is an animal, and not where the key was left unsure. */
export const isAnimal = (found: KeyFound): found is KeyAnimal => Object.hasOwn(keyAnimals, found)
