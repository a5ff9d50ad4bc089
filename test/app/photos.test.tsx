/** Photos in words: what is here and what is not, and every way a photo is refused. */
import { expect, test } from 'vitest'
import { costSince } from '../../app/words/lifePage.ts'
import {
  allPhotosWords,
  betweenWords,
  bytesWords,
  photoRefusal,
  photoSays,
  picturesHereText,
  picturesInFileText,
  picturesTakenText,
  restoreRefusal,
} from '../../app/words/photos.ts'
import { day, type PhotoId, type PhotoKept } from '../../core/index.ts'
import { at, given, london } from '../support/given.ts'
import { lab, longGallery } from '../support/givenLab.ts'

const now = at('2026-11-25 20:30')
const reading = { world: given(lab).world(), now, zone: london, today: day('2026-11-25') }
const plain = (text: string | undefined): string | undefined => text?.replace(/\u00a0/g, ' ')

test('a size is said in the unit that suits it, and is never nothing', () => {
  expect([1, 99_499, 340_000, 9_840_000, 48_200_000].map((bytes) => plain(bytesWords(bytes)))).toEqual([
    '1 kB',
    '99 kB',
    '0.3 MB',
    '9.8 MB',
    '48 MB',
  ])
})

test('how many there are, and how far apart', () => {
  expect([2, 5].map((count) => plain(allPhotosWords(count)))).toEqual(['Both photos', 'All 5 photos'])
  expect([0, 1, 92].map((days) => plain(betweenWords(days)))).toEqual([
    'Both of one day.',
    'One day between them.',
    '92 days between them.',
  ])
})

test('a photo is described for ears', () => {
  const fact: PhotoKept = {
    kind: 'photoKept',
    at: at('2026-09-14 11:05'),
    photo: 'a'.repeat(32) as PhotoId,
    of: { tank: longGallery },
    type: 'image/jpeg',
    bytes: 1,
  }
  expect(plain(photoSays(fact, reading))).toBe('Photo of 14 September')
  expect(plain(photoSays({ ...fact, words: 'left corner' }, reading))).toBe('Photo of 14 September: left corner')
})

test('a backup says what it leaves out', () => {
  const here = (told: number, found: number) => plain(picturesHereText({ told, here: found }))
  expect(here(1, 1)).toBe(
    'The book tells of 1 photo, and it is on this phone. The backup file by itself says so and leaves it out.',
  )
  expect(here(4, 3)).toContain('4 photos, 3 of them on this phone')
  expect(here(4, 0)).toContain('none of them on this phone')
  expect(here(4, 4)).toContain('all on this phone')
})

test('a file says whether they are in it', () => {
  const inFile = (told: number, inside: number, missing: number) =>
    plain(picturesInFileText({ told, inside, missing: Array(missing).fill('it') }))
  expect(inFile(0, 0, 0)).toBeUndefined()
  expect(inFile(4, 0, 0)).toBe('It tells of 4 photos, the pictures are not in it.')
  expect(inFile(1, 0, 0)).toBe('It tells of 1 photo, the picture is not in it.')
  expect(inFile(4, 4, 4)).toBe('It tells of 4 photos, and all are in it.')
  expect(inFile(1, 1, 0)).toBe('It tells of 1 photo, and it is in it, all here already.')
  expect(inFile(4, 3, 0)).toBe('It tells of 4 photos, and 3 of them are in it, all here already.')
})

test('what came in, what had changed, and why the rest did not', () => {
  const taken = (kept: number, damaged: number, stopped?: 'storageFull' | 'fileUnreadable') =>
    plain(picturesTakenText({ kept, damaged, stopped: stopped && { why: stopped } }))
  expect(taken(3, 0)).toBe('3 photos taken in.')
  expect(taken(1, 1)).toBe('1 photo taken in. One in the file had changed on the way and was left out.')
  expect(taken(0, 2)).toContain('Two in the file had changed on the way and were left out.')
  expect(taken(2, 0, 'storageFull')).toContain('no room on this phone')
  expect(taken(2, 0, 'fileUnreadable')).toContain('take the file in once more')
})

test('each way a photo is refused has its own sentence', () => {
  const all = [
    { why: 'notAPicture' },
    { why: 'nothingToShow' },
    { why: 'photoNotYet', at: now },
    { why: 'photoThere' },
    { why: 'photoTooLarge', bytes: 120_000_000, most: 100_000_000 },
    { why: 'photoWordsTooLong', most: 300 },
    { why: 'storageFull' },
  ] as const
  const said = all.map((refusal) => photoRefusal(refusal, reading))
  expect(new Set(said).size).toBe(all.length)
  expect(plain(said[4])).toBe('That photo is 120 MB; more than 100 MB are not kept.')
  expect(plain(said[5])).toContain('300 letters')
  expect(restoreRefusal({ why: 'zipBroken' }, reading)).toContain('cut short')
})

test('on the page to show what is not known is not nothing', () => {
  const cost = new Map([['GBP', 1420]])
  expect(costSince({ doses: 0, cost: new Map(), unpriced: 0 })).toBeUndefined()
  expect(costSince({ doses: 4, cost: new Map(), unpriced: 4 })).toBe('What the food cost is not known.')
  expect(costSince({ doses: 4, cost: new Map(), unpriced: 0 })).toBe('The food for it was free.')
  expect(plain(costSince({ doses: 41, cost, unpriced: 0 }))).toBe('The food for 41 doses came to £14.20.')
  expect(plain(costSince({ doses: 41, cost, unpriced: 1 }))).toBe(
    'The food for 41 doses came to £14.20. 1 dose came from food whose price is not known.',
  )
})
