/** What the key says: plain, one next step each, and nothing that is poured into the tank. */
import { describe, expect, test } from 'vitest'
import { formName } from '../../app/words/forms.ts'
import {
  answerWords,
  foundWords,
  keyRefusalText,
  keyWords,
  markWords,
  questionWords,
  verdictWords,
} from '../../app/words/key.ts'
import { keyAnimals, keyChoices } from '../../core/index.ts'

const said = [
  ...Object.values(keyWords),
  ...Object.values(verdictWords),
  ...Object.values(questionWords).flatMap(({ asks, look }) => [asks, look ?? '']),
  ...Object.values(answerWords),
  ...Object.values(markWords),
  ...Object.values(foundWords).flatMap(({ name, says, next }) => [name, says, next]),
  keyRefusalText({ why: 'notAskedHere', question: 'where' }),
  keyRefusalText({ why: 'noSuchAnswer', question: 'where' }),
]

describe('the key', () => {
  test('knows no medicine, and warns against any', () => {
    expect(said.join('\n')).not.toMatch(
      /medic|treat|cure|drug|remed|poison|chemical|\bdip|bath|copper|peroxide|iodine/i,
    )
    expect(keyWords.never).toMatch(/^Pour nothing into the tank/)
  })
  test('says one next step for each, in one sentence', () => {
    for (const { next } of Object.values(foundWords)) expect(next.match(/[.!?](\s|$)/g)).toHaveLength(1)
  })
  test('asks in questions of one line or two', () => {
    for (const { asks } of Object.values(questionWords)) {
      expect(asks).toMatch(/\?$/)
      expect(asks.length).toBeLessThan(75)
    }
  })
  test('names no two things alike', () => {
    for (const words of [
      Object.values(answerWords),
      Object.values(markWords),
      Object.values(foundWords).map((f) => f.name),
    ])
      expect(new Set(words).size).toBe(words.length)
  })
  test('leaves harmless animals where they are and never tells her to leave a suspect in the tank', () => {
    for (const [animal, { verdict }] of Object.entries(keyAnimals)) {
      const { next } = foundWords[animal as keyof typeof keyAnimals]
      expect(next.startsWith('Leave it be')).toBe(verdict !== 'trap')
    }
  })
  test('names a form it does not know by the form’s own name', () => {
    expect(formName('copepod')).toBe('A copepod')
    expect(formName('waterBear')).toBe('WaterBear')
    expect(formName('constructor')).toBe('Constructor')
  })
  test('offers a way on in every question to whoever cannot tell', () => {
    for (const [question, answers] of Object.entries(keyChoices))
      expect('cannotTell' in answers || question === 'where').toBe(true)
  })
})
