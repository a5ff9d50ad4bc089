/** Photos in the book: the entry tells of the picture, whether or not the picture is there. */
import { describe, expect, test } from 'vitest'
import {
  type Fact,
  keepPhoto,
  mostPhotoBytes,
  type ParcelId,
  type PhotoAsked,
  type PhotoId,
  type PhotoOf,
  photosOf,
  photosOfBottle,
  photosOfTank,
  picturesTold,
  type RunId,
  recordCount,
  sayOfPhoto,
  strikeOut,
  type World,
} from '../../../core/index.ts'
import { at, type Book, given, refusalOf } from '../../support/given.ts'
import { bottleOf, cockle, firstBottle, lab, longGallery, tankOf, usGal } from '../../support/givenLab.ts'

const sha = (first: string): PhotoId => first.padEnd(32, '0') as PhotoId
const photo = (of: PhotoOf, first: string, more: Partial<PhotoAsked> = {}): Omit<PhotoAsked, 'at'> => ({
  photo: sha(first),
  of,
  type: 'image/jpeg',
  bytes: 240_000,
  ...more,
})
const keep = (asked: Omit<PhotoAsked, 'at'>, when: string) => (world: World) =>
  keepPhoto(world, { at: at(when), ...asked }, at(when))
const pane =
  (counts: readonly number[], when: string, where = 'sump glass') =>
  (world: World) =>
    recordCount(
      world,
      { tank: longGallery, at: at(when), looked: { how: 'pane', frame: 100 }, counts, where },
      at(when),
    )
const parcel = 'boxoftwo' as ParcelId
const run = 'thatnight' as RunId
const came: Fact = {
  kind: 'liveBottlesCame',
  at: at('2026-08-25 11:00'),
  parcel,
  came: at('2026-08-25 11:00'),
  bottles: [{ animals: 'copepods', count: 2, holds: 473_000 as never }],
  looked: 'lively',
}
const planned: Fact = {
  kind: 'seedingPlanned',
  at: at('2026-08-25 12:00'),
  run,
  tank: longGallery,
  night: '2026-08-25' as never,
  parcel,
  animals: ['copepods'],
  pours: [{ into: 'sump', bottles: 2 }],
  holds: 473_000 as never,
  waterOut: 'before',
  steps: [],
  off: at('2026-08-25 22:00'),
  morning: at('2026-08-26 07:00'),
}
const tank = (): Book => given(lab)

describe('the sump glass, counted and photographed three times', () => {
  const book = tank()
  const entries = ['2026-09-01 11:00', '2026-10-01 11:00', '2026-11-01 11:00'].flatMap((when, i) => {
    const counted = book.does(pane([3 + i], when))
    for (const entry of counted) book.does(keep(photo({ entry }, `${i}a`, { words: ' left corner ' }), when))
    return counted
  })
  test('lies side by side in the order it was taken, its words trimmed', () => {
    const [group, ...others] = photosOfTank(book.world(), longGallery, at('2026-11-02 12:00'))
    expect(others).toEqual([])
    expect(group).toMatchObject({ shows: 'spot', series: { where: 'sump glass' } })
    expect(group?.photos.map(({ fact }) => fact.photo)).toEqual([sha('0a'), sha('1a'), sha('2a')])
    expect(group?.photos[0]?.fact.words).toBe('left corner')
  })
  test('of one count only its own', () => {
    const [, second] = entries
    if (!second) throw new Error('not counted')
    expect(photosOf(book.world(), { entry: second }).map(({ fact }) => fact.photo)).toEqual([sha('1a')])
  })
  test('shows up with no other tank', () => {
    expect(photosOfTank(book.world(), cockle, at('2026-11-02 12:00'))).toEqual([])
  })
  test('a count that is crossed out takes no photo along', () => {
    const [first] = entries
    if (!first) throw new Error('not counted')
    book.does((world) => strikeOut(world, { target: first }, at('2026-11-02 13:00')))
    const groups = photosOfTank(book.world(), longGallery, at('2026-11-02 14:00'))
    expect(groups.map(({ shows, photos }) => [shows, photos.length])).toEqual([
      ['spot', 2],
      ['tank', 1],
    ])
  })
  test('a photo that is crossed out is told of no more', () => {
    const [newest] = photosOfTank(book.world(), longGallery, at('2026-11-02 14:00'))[0]?.photos.slice(-1) ?? []
    if (!newest) throw new Error('no photo')
    expect(picturesTold(book.world()).has(newest.fact.photo)).toBe(true)
    book.does((world) => strikeOut(world, { target: newest.entry }, at('2026-11-02 15:00')))
    expect(picturesTold(book.world()).has(newest.fact.photo)).toBe(false)
  })
})

test('the box, the night and the pour stand together, and belong to the tank they went into', () => {
  const book = given(lab, came, planned)
  book.does(keep(photo({ parcel }, 'b0'), '2026-08-25 11:05'))
  book.does(keep(photo({ run }, 'b1'), '2026-08-25 23:10'))
  book.does(keep(photo({ tank: longGallery }, 'b2'), '2026-08-26 09:00'))
  const groups = photosOfTank(book.world(), longGallery, at('2026-08-26 10:00'))
  expect(groups.map(({ shows, photos }) => [shows, photos.map(({ fact }) => fact.photo)])).toEqual([
    ['tank', [sha('b2')]],
    ['pour', [sha('b0'), sha('b1')]],
  ])
  expect(photosOfTank(book.world(), cockle, at('2026-08-26 10:00'))).toEqual([])
})

describe('what is refused', () => {
  const now = at('2026-09-01 12:00')
  const of = { tank: longGallery }
  const ask = (more: Partial<PhotoAsked>) => () =>
    keepPhoto(tank().world(), { ...photo(of, 'c0'), at: now, ...more }, now)
  test.each<[string, Partial<PhotoAsked>, object]>([
    ['a tank that is none', { of: { tank: 'nowhere' as never } }, { why: 'nothingToShow' }],
    ['a parcel that never came', { of: { parcel } }, { why: 'nothingToShow' }],
    ['a night that was never planned', { of: { run } }, { why: 'nothingToShow' }],
    ['an entry that is none', { of: { entry: 'x' as never } }, { why: 'nothingToShow' }],
    ['a day that is still to come', { at: at('2026-09-02 12:00') }, { why: 'photoNotYet', at: at('2026-09-02 12:00') }],
    ['no bytes', { bytes: 0 }, { why: 'photoTooLarge', bytes: 0, most: mostPhotoBytes }],
    [
      'more bytes than are read back',
      { bytes: mostPhotoBytes + 1 },
      { why: 'photoTooLarge', bytes: mostPhotoBytes + 1, most: mostPhotoBytes },
    ],
    ['a page of words', { words: 'x'.repeat(301) }, { why: 'photoWordsTooLong', most: 300 }],
  ])('%s', (_, more, refusal) => {
    expect(refusalOf(ask(more)())).toEqual(refusal)
  })
  test('the same picture of the same thing once more, but not of another', () => {
    const book = tank()
    book.does(keep(photo(of, 'c0'), '2026-09-01 11:00'))
    expect(refusalOf(keep(photo(of, 'c0'), '2026-09-01 11:10')(book.world()))).toEqual({ why: 'photoThere' })
    const [entry] = book.does(pane([1], '2026-09-01 11:20'))
    if (!entry) throw new Error('not counted')
    expect(keep(photo({ entry }, 'c0'), '2026-09-01 11:30')(book.world()).ok).toBe(true)
  })
})

test('nothing more is kept of an entry that was crossed out', () => {
  const book = tank()
  const [entry] = book.does(pane([1], '2026-09-01 11:20'))
  if (!entry) throw new Error('not counted')
  book.does((world) => strikeOut(world, { target: entry }, at('2026-09-01 11:30')))
  expect(refusalOf(keep(photo({ entry }, 'c0'), '2026-09-01 11:40')(book.world()))).toEqual({ why: 'nothingToShow' })
})

test('a parcel that went into another tank shows there, and one that went nowhere shows in none', () => {
  const other = 'otherbox' as ParcelId
  const book = given(lab, tankOf(cockle, usGal(60), { name: 'Cockle' }), came, planned, { ...came, parcel: other })
  book.does(keep(photo({ parcel }, 'b0'), '2026-08-25 11:05'))
  book.does(keep(photo({ parcel: other }, 'b1'), '2026-08-25 11:06'))
  const told = (of: typeof cockle) => photosOfTank(book.world(), of, at('2026-08-26 10:00')).length
  expect([told(longGallery), told(cockle)]).toEqual([1, 0])
  book.note({ ...planned, run: 'nextnight' as RunId, tank: cockle, parcel: other, at: at('2026-08-25 13:00') })
  expect([told(longGallery), told(cockle)]).toEqual([1, 1])
  expect(photosOfTank(book.world(), cockle, at('2026-08-26 10:00'))[0]?.photos[0]?.fact.photo).toBe(sha('b1'))
})

test('photos of a bottle stay with it when its entry is put right', () => {
  const book = given(lab, bottleOf({ holds: 120, received: '2026-08-20', seen: at('2026-08-20 18:00') }))
  const first = () => {
    const bottle = book.world().bottles.get(firstBottle)
    if (!bottle) throw new Error('no bottle')
    return bottle
  }
  const before = first()
  book.does(keep(photo({ entry: before.entry }, 'f0'), '2026-08-21 10:00'))
  book.does((world) => strikeOut(world, { target: before.entry }, at('2026-08-21 11:00')))
  book.note({ ...before.recorded, at: at('2026-08-21 11:01') })
  expect(first().entry).not.toBe(before.entry)
  expect(photosOfBottle(book.world(), firstBottle).map(({ fact }) => fact.photo)).toEqual([sha('f0')])
  expect(photosOfBottle(book.world(), 'another' as never)).toEqual([])
})

describe('said otherwise', () => {
  const now = at('2026-09-03 12:00')
  const book = tank()
  const [entry] = book.does(keep(photo({ tank: longGallery }, 'd0', { words: 'left' }), '2026-09-01 11:00'))
  if (!entry) throw new Error('not kept')
  const say = (words: string, when: string) => sayOfPhoto(book.world(), { entry, words, at: at(when) }, now)
  test('nothing new is nothing written', () => {
    expect(say('left', '2026-09-01 11:00')).toEqual({ ok: true, value: [] })
  })
  test('neither a day to come nor a page of words', () => {
    expect(refusalOf(say('left', '2026-09-04 11:00'))).toEqual({ why: 'photoNotYet', at: at('2026-09-04 11:00') })
    expect(refusalOf(say('x'.repeat(301), '2026-09-01 11:00'))).toEqual({ why: 'photoWordsTooLong', most: 300 })
  })
  test('the picture stays, its day and words are the new ones', () => {
    book.does(() => say(' right ', '2026-08-30 11:00'))
    const all = photosOf(book.world(), { tank: longGallery })
    expect(all.map(({ fact }) => [fact.photo, fact.words, fact.at])).toEqual([
      [sha('d0'), 'right', at('2026-08-30 11:00')],
    ])
    expect(refusalOf(say('left', '2026-08-30 11:00'))).toEqual({ why: 'noSuchEntry' })
  })
})
