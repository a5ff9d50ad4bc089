/** A part of a portion is told as a share of the cup, and a range by where it comes from. Checked by hand. */
import { expect, test } from 'vitest'
import { bandSource } from '../../app/words/plan.ts'
import { unlikePlanWords } from '../../app/words/tonight.ts'
import { bandOf, foodAt, microlitres, shareOfOne, tankAt } from '../../core/index.ts'
import { at, given } from '../support/given.ts'
import { greenFood, lab, lineOf, longGallery, onHand, planOf, tankOf, usGal } from '../support/givenLab.ts'

const now = at('2027-06-10 21:15')
const of = (amount: number, each: number) => shareOfOne(microlitres(amount), microlitres(each))

test('eighths, rounded down to what the eye can pour, never to nothing', () => {
  expect(of(400, 1000)).toEqual({ parts: 3, of: 8 })
  expect(of(500, 1000)).toEqual({ parts: 1, of: 2 })
  expect(of(780, 1000)).toEqual({ parts: 3, of: 4 })
  expect(of(60, 1000)).toEqual({ parts: 1, of: 8 })
  expect(of(1000, 1000)).toEqual({ parts: 1, of: 1 })
})

test('a portion larger than the plan is poured by the share of the cup', () => {
  const world = given(
    lab,
    tankOf(longGallery, usGal(60)),
    planOf({ first: '2027-06-10', amount: 0.4 }),
    onHand({ portions: 9, each: 1, frozen: '2027-01-05' }),
  ).world()
  const [serving] = lineOf(world, now).servings
  if (!serving) throw new Error('nothing is served')
  expect(unlikePlanWords(serving, 400)).toContain('give about 3/8 of the cup; the rest')
})

test('a range nobody typed is called common practice', () => {
  const world = given(lab, tankOf(longGallery, usGal(60))).world()
  const food = foodAt(world, greenFood, now)
  const tank = tankAt(world, longGallery, now)
  if (!food || !tank) throw new Error('the lab has neither')
  expect(bandOf(tank, food)?.high).toBe(600)
  expect(bandSource(food)).toMatch(/^common practice: 1 to 2/)
  const typed = { ...food, band: { ...food.band, high: microlitres(1500) } }
  expect(bandSource(typed)).toMatch(/^the range you typed: 1 to 1.5/)
})
