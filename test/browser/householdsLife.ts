/** Tanks whose small life has been poured, counted and recognised. */
import {
  answerKey,
  beginKey,
  type KeyGiven,
  keepPhoto,
  type LookedAsked,
  type PhotoId,
  type PhotoOf,
  recordCount,
  recordKind,
  recordPour,
} from '../../core/index.ts'
import { type PictureDrawn, pictures } from '../fixtures/photos/pictures.ts'
import { at, type Book, done, given } from '../support/given.ts'
import { dose, lab, longGallery, onHand, planOf, tankOf, usGal } from '../support/givenLab.ts'

const torch: LookedAsked = { how: 'torch', seconds: 60, frame: 100 }
const jar: LookedAsked = { how: 'jar', litres: 2, rinsedInto: 50, lookedAt: 1, sieve: 60 }

/** Poured on 25 August; fed, counted by torch and by jar, and two kinds told apart since. */
const smallLife = (): Book => {
  const book = given(
    lab,
    tankOf(longGallery, usGal(200), { name: 'Long Gallery' }),
    onHand({ portions: 90, each: 1, frozen: '2026-08-01' }),
    planOf({ first: '2026-08-26', amount: 1 }),
  )
  const count = (looked: LookedAsked, where: string, when: string, counts: readonly number[]) =>
    book.does((world) => recordCount(world, { tank: longGallery, at: at(when), looked, counts, where }, at(when)))
  const see = (when: string, where: string, ...all: readonly KeyGiven[]) => {
    const walk = all.reduce((before, each) => done(answerKey(before, each)), beginKey())
    book.does((world) => recordKind(world, { tank: longGallery, at: at(when), walk, where }, at(when)))
  }
  book.does((world) =>
    recordPour(
      world,
      {
        tank: longGallery,
        poured: at('2026-08-25 21:50'),
        animals: ['copepods', 'rotifers'],
        pours: [
          { into: 'display', bottles: 2.5 },
          { into: 'sump', bottles: 2.5 },
        ],
      },
      at('2026-08-25 21:50'),
    ),
  )
  for (const night of ['08-26', '08-28', '08-30', '09-01']) book.does(dose(at(`2026-${night} 21:20`)))
  count(torch, 'back wall', '2026-09-12 22:20', [41, 38, 44])
  see(
    '2026-09-12 22:40',
    'back wall',
    { question: 'where', answer: 'elsewhere' },
    { question: 'shell', answer: 'clamShell' },
  )
  count(torch, 'back wall', '2026-09-26 22:30', [30, 19, 26])
  count(torch, 'back wall', '2026-10-03 21:15', [4, 2, 5])
  count(jar, 'sump', '2026-10-10 11:00', [4, 6, 5])
  see(
    '2026-10-10 11:30',
    'the sand of the sump',
    { question: 'where', answer: 'onFish' },
    { question: 'onFish', answer: 'swollenRider' },
  )
  count(torch, 'back wall', '2026-10-10 22:10', [12, 15, 9])
  count(jar, 'sump', '2026-11-10 11:00', [0, 0, 0])
  return book
}

/** The sump's pane photographed twice, a kind once, the tank once; and one picture is on another phone. */
const photographed = (): Book => {
  const book = smallLife()
  const photo = (when: string, of: PhotoOf, { id, bytes }: Pick<PictureDrawn, 'id' | 'bytes'>, words = '') =>
    book.does((world) =>
      keepPhoto(
        world,
        { at: at(when), photo: id, of, type: 'image/jpeg', bytes: bytes.length, words },
        at('2026-11-12 10:00'),
      ),
    )
  const pane = (when: string, counts: readonly number[]): PhotoOf => {
    const looked: LookedAsked = { how: 'pane', frame: 100 }
    const [entry] = book.does((world) =>
      recordCount(world, { tank: longGallery, at: at(when), looked, counts, where: 'sump glass' }, at(when)),
    )
    if (!entry) throw new Error('not counted')
    return { entry }
  }
  photo(
    '2026-09-14 11:05',
    pane('2026-09-14 11:00', [12]),
    pictures.glassInSeptember,
    'the left corner, from a hand away',
  )
  photo('2026-11-09 11:05', pane('2026-11-09 11:00', [70]), pictures.glassInNovember)
  photo('2026-08-25 11:10', { tank: longGallery }, pictures.box, 'the box, just opened')
  photo(
    '2026-11-10 09:00',
    { tank: longGallery },
    { ...pictures.box, id: 'e'.repeat(32) as PhotoId },
    'taken with the other phone',
  )
  return book
}

export const householdsLife = {
  smallLife: () => smallLife().entries(),
  photographed: () => photographed().entries(),
}
