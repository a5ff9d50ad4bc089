/** Which window a touched nudge brings to the front. */
// @vitest-environment node
import { expect, test } from 'vitest'
import { herWindow } from '../../app/worker/herWindow.ts'

const home = 'https://tank.example/app/'
const hers = { url: `${home}#/food` }
const looksRound = { url: `${home}?made-up#/` }

test('the first that is open', () => {
  expect(herWindow([hers, { url: home }])).toBe(hers)
})
test('one that looks round is passed over, and is not better than none', () => {
  expect(herWindow([looksRound, hers])).toBe(hers)
  expect(herWindow([looksRound])).toBeUndefined()
  expect(herWindow([])).toBeUndefined()
})
test('whatever else follows the question mark, it is hers', () => {
  const shared = { url: `${home}?from=home#/` }
  expect(herWindow([shared])).toBe(shared)
})
