/** The key to small animals: every way through it, and what it may never say. */
import { describe, expect, test } from 'vitest'
import {
  answerKey,
  backInKey,
  beginKey,
  type KeyAnimal,
  type KeyGiven,
  type KeyMark,
  type KeyPlace,
  type KeyWalk,
  keyAnimals,
  keyPlace,
  marksForHarmless,
} from '../../../core/index.ts'
import * as published from '../../checks/marks.ts'
import { done, refusalOf } from '../../support/given.ts'

type Found = Extract<KeyPlace, { readonly at: 'found' }>

const subsets = (marks: readonly KeyMark[]): readonly (readonly KeyMark[])[] =>
  Array.from({ length: 2 ** marks.length }, (_, which) => marks.filter((_, bit) => (which >> bit) & 1))
const ways = (place: KeyPlace): readonly KeyGiven[] =>
  place.at === 'choice'
    ? place.answers.map((answer) => ({ question: place.question, answer }))
    : place.at === 'ticks'
      ? subsets(place.offered).map((ticked) => ({ question: place.question, ticked }))
      : []
/** A way to every place there is: what follows depends on the place alone, so each is gone on from once. */
const everyPlace = (): readonly KeyWalk[] => {
  const met = new Map([[JSON.stringify(keyPlace(beginKey())), beginKey()]])
  for (const walk of met.values())
    for (const given of ways(keyPlace(walk))) {
      const next = done(answerKey(walk, given))
      const place = JSON.stringify(keyPlace(next))
      if (!met.has(place)) met.set(place, next)
    }
  return [...met.values()]
}
const end = (walk: KeyWalk): Found => {
  const place = keyPlace(walk)
  if (place.at !== 'found') throw new Error(`still asking ${place.question}`)
  return place
}
const places = everyPlace()
const walks = places.filter((walk) => keyPlace(walk).at === 'found')
const ends = walks.map(end)
const own = (animal: KeyAnimal, marks: readonly KeyMark[]) =>
  keyAnimals[animal].marks.filter((mark) => marks.includes(mark)).length

describe('every way through', () => {
  test('goes on until it ends, within eleven answers, and there are hundreds of ends', () => {
    expect(walks.length).toBeGreaterThan(250)
    for (const walk of places) expect(ways(keyPlace(walk)).length > 0).toBe(keyPlace(walk).at !== 'found')
    expect(Math.max(...walks.map(({ given }) => given.length))).toBeLessThanOrEqual(11)
  })
  test('leads to every animal and every "not sure"', () => {
    const met = new Set(ends.map(({ found }) => found))
    expect([...met].sort()).toEqual(
      [
        ...Object.keys(keyAnimals),
        'unsure',
        'unsureClicks',
        'unsureCrab',
        'unsureOnCoral',
        'unsureOnFish',
        'unsureWoodlouse',
      ].sort(),
    )
  })
  test('says harmless only on two marks of that animal', () => {
    const safe = ends.filter(({ verdict }) => verdict === 'harmless')
    expect(safe.length).toBeGreaterThan(10)
    for (const { found, marks } of safe) expect(own(found as KeyAnimal, marks)).toBeGreaterThanOrEqual(marksForHarmless)
  })
  test('never says harmless of what sits on a fish, nor where a harmful mark was seen', () => {
    const harm = new Set(
      Object.values(keyAnimals)
        .filter(({ verdict }) => verdict === 'trap')
        .flatMap(({ marks }) => marks),
    )
    // Many a harmless animal walks over coral, and both kinds of shrimp click.
    harm.delete('livesOnCoral')
    harm.delete('clicks')
    for (const { verdict, marks } of ends)
      if (marks.some((mark) => harm.has(mark))) expect(verdict === 'trap' || verdict === 'unsure').toBe(true)
  })
  test('that is "none of these" and "I cannot tell" throughout is not sure', () => {
    const shrug = (walk: KeyWalk): number => {
      const place = keyPlace(walk)
      if (place.at === 'found') {
        expect(place.verdict).toBe('unsure')
        return 1
      }
      const shrugs = ways(place).filter((given) => 'answer' in given && ['none', 'cannotTell'].includes(given.answer))
      return shrugs.reduce((ended, given) => ended + shrug(done(answerKey(walk, given))), 0)
    }
    expect(shrug(done(answerKey(beginKey(), { question: 'where', answer: 'elsewhere' })))).toBe(2 ** 8)
    expect(shrug(done(answerKey(beginKey(), { question: 'where', answer: 'onFish' })))).toBe(2)
  })
  test('goes back answer by answer to the beginning', () => {
    for (const walk of walks) {
      let back = walk
      for (let left = walk.given.length; left > 0; left -= 1) {
        back = backInKey(back)
        expect(back.given).toEqual(walk.given.slice(0, left - 1))
        expect(keyPlace(back).at).not.toBe('found')
      }
      expect(backInKey(back)).toEqual(beginKey())
    }
  })
})

const toWoodlouse: readonly KeyGiven[] = [
  { question: 'where', answer: 'elsewhere' },
  ...(['shell', 'spins', 'hops', 'sideways', 'glassy', 'thin'] as const).map((question) => ({
    question,
    answer: 'none' as const,
  })),
  { question: 'flat', answer: 'flatLegsAlike' },
  { question: 'woodlouseShape', answer: 'ovalBody' },
]
const given = (...answers: readonly KeyGiven[]): KeyWalk =>
  answers.reduce<KeyWalk>((walk, answer) => done(answerKey(walk, answer)), beginKey())
const ticking = (...ticked: readonly KeyMark[]) => end(given(...toWoodlouse, { question: 'woodlouseMarks', ticked }))

describe('the two that are taken for each other', () => {
  test('one or two tail plates and slow is the harmless grazer', () => {
    expect(ticking('tailPlates', 'slow')).toMatchObject({ found: 'sphaeromatid', verdict: 'harmless' })
    expect(ticking('domed', 'rolls')).toMatchObject({ found: 'sphaeromatid', verdict: 'harmless' })
  })
  test.each(['rolls', 'tailPlates', 'slow', 'domed'] as const)('%s alone is not enough', (mark) => {
    expect(ticking(mark)).toMatchObject({ found: 'unsureWoodlouse', verdict: 'unsure' })
  })
  test('separate rings with big eyes, speed or a taste for meat go into the jar', () => {
    expect(ticking('tailRings', 'bigEyes')).toMatchObject({ found: 'cirolanid', verdict: 'trap' })
    expect(ticking('fastStraight', 'comesToMeat')).toMatchObject({ found: 'cirolanid', verdict: 'trap' })
    // Care before comfort, where the marks contradict each other.
    expect(ticking('tailRings', 'bigEyes', 'slow', 'domed', 'rolls').verdict).toBe('trap')
  })
  test('one harmful mark takes "harmless" away', () => {
    expect(ticking('tailPlates', 'slow', 'domed', 'rolls', 'comesToMeat').verdict).toBe('unsure')
    expect(ticking('bigEyes').verdict).toBe('unsure')
    expect(ticking().verdict).toBe('unsure')
  })
})

describe('as published descriptions have them', () => {
  test.each([published.gnorimosphaeroma, published.sphaeromatidae])('$of is harmless', ({ says }) => {
    expect(ticking(...says.map(({ mark }) => mark))).toMatchObject({ found: 'sphaeromatid', verdict: 'harmless' })
  })
  test.each([published.cirolanidae, published.reefCirolanidae, published.cirolanaSiamensis])(
    '$of is trapped',
    ({ says }) => {
      expect(ticking(...says.map(({ mark }) => mark))).toMatchObject({ found: 'cirolanid', verdict: 'trap' })
    },
  )
  test.each([
    ['gnathiid', published.gnathiidae],
    ['munnid', published.munna],
  ] as const)('%s is known by the marks it is described with', (animal, { says }) => {
    expect([...new Set(says.map(({ mark }) => mark))].sort()).toEqual([...keyAnimals[animal].marks].sort())
    const reached = ends.filter(({ found }) => found === animal)
    for (const { mark } of says) expect(reached.some(({ marks }) => marks.includes(mark))).toBe(true)
  })
})

describe('what is not asked is refused', () => {
  test('an answer to another question', () => {
    expect(refusalOf(answerKey(beginKey(), { question: 'crab', answer: 'hairyPincers' }))).toEqual({
      why: 'notAskedHere',
      question: 'crab',
    })
  })
  test('an answer that is not offered, and a mark that is not', () => {
    expect(refusalOf(answerKey(beginKey(), { question: 'where', answer: 'hugeClaw' })).why).toBe('noSuchAnswer')
    expect(
      refusalOf(answerKey(given(...toWoodlouse), { question: 'woodlouseMarks', ticked: ['slow', 'hugeClaw'] })).why,
    ).toBe('noSuchAnswer')
  })
  test('anything once it is found', () => {
    const found = given({ question: 'where', answer: 'onFish' }, { question: 'onFish', answer: 'hookedRider' })
    expect(end(found)).toMatchObject({ found: 'fishLouse', verdict: 'trap', marks: ['ridesFish', 'hookedLegs'] })
    expect(refusalOf(answerKey(found, { question: 'onFish', answer: 'none' })).why).toBe('notAskedHere')
  })
  test('an old draft is taken as far as it still makes sense', () => {
    const old: KeyWalk = {
      given: [
        { question: 'where', answer: 'elsewhere' },
        { question: 'shell', answer: 'hugeClaw' },
        { question: 'spins', answer: 'none' },
      ],
    }
    expect(keyPlace(old)).toMatchObject({ at: 'choice', question: 'shell' })
    expect(done(answerKey(old, { question: 'shell', answer: 'clamShell' })).given).toHaveLength(2)
    expect(backInKey(old)).toEqual(beginKey())
  })
})
