/** Which pictures may go: only those no entry tells of, and none while something in the book cannot be read. */
import 'fake-indexeddb/auto'
import { beforeAll, expect, test } from 'vitest'
import { allPictures, deleteLeftOver, keepPicture, picturesLeftOver } from '../../app/state/photos.ts'
import { request, start, takeIn } from '../../app/state/store.ts'
import { type PhotoId, type Stamp, strikeOut } from '../../core/index.ts'
import { at, done, given } from '../support/given.ts'
import { lab, longGallery } from '../support/givenLab.ts'

const sha = (first: string): PhotoId => first.padEnd(32, '0') as PhotoId
const picture = { type: 'image/jpeg', bytes: new Uint8Array([0xff, 0xd8]).buffer } as const
const book = given(lab)
const told = (photo: PhotoId): Stamp => {
  const [entry] = book.note({
    kind: 'photoKept',
    at: at('2026-09-01 11:00'),
    photo,
    of: { tank: longGallery },
    type: 'image/jpeg',
    bytes: 2,
  })
  if (!entry) throw new Error('not noted')
  return entry
}
const crossedOut = told(sha('a'))
told(sha('b'))

beforeAll(async () => {
  await start()
  done(await takeIn(book.entries()))
  for (const id of ['a', 'b']) done(await keepPicture(sha(id), picture))
})

test('a picture that is told of stays', async () => {
  expect(done(await picturesLeftOver())).toEqual([])
  expect(done(await deleteLeftOver())).toBe(0)
  expect(done(await allPictures())).toHaveLength(2)
})

test('crossed out, it is left over, and goes when she says so; the other stays', async () => {
  done(await request((world, { now }) => strikeOut(world, { target: crossedOut }, now)))
  expect(done(await picturesLeftOver())).toEqual([sha('a')])
  expect(done(await allPictures())).toHaveLength(2)
  expect(done(await deleteLeftOver())).toBe(1)
  expect(done(await allPictures())).toEqual([sha('b')])
})

test('what a newer version wrote may tell of it: none is left over then', async () => {
  done(await keepPicture(sha('c'), picture))
  expect(done(await picturesLeftOver())).toEqual([sha('c')])
  const newer = {
    id: '0017672256000000-000-kitchenphone' as Stamp,
    unread: { kind: 'photoOnTheMoon', photo: sha('c') },
  }
  done(await takeIn([newer]))
  expect(done(await picturesLeftOver())).toEqual([])
  expect(done(await deleteLeftOver())).toBe(0)
})
