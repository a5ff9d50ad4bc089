/** Pumps that are off too long are said again and again, whatever the hour. Checked only against ourselves. */
import { expect, test } from 'vitest'
import {
  morningNudges,
  nextRunNudge,
  nudges,
  planSeeding,
  pumpNudges,
  type RunId,
  stopRun,
  tickStep,
  usualWishes,
} from '../../../core/index.ts'
import { at, given, london } from '../../support/given.ts'
import { lab, longGallery, mL } from '../../support/givenLab.ts'
import { equipmentOf } from '../../support/givenSeeding.ts'

const run = 'run1' as RunId
const equipment = equipmentOf(['return', 'skimmer'], [{ place: 'display', mayBeLit: false }])
const night = () => {
  const book = given(lab, equipment)
  book.does((world) =>
    planSeeding(
      world,
      {
        run,
        tank: longGallery,
        animals: ['copepods'],
        pours: [{ into: 'display', bottles: 1 }],
        holds: mL(473),
        waterOut: 'after',
        off: at('2027-06-15 21:40'),
        morning: at('2027-06-16 07:30'),
      },
      at('2027-06-15 18:00'),
    ),
  )
  const tick = (step: string, now: string) => book.does((world) => tickStep(world, { run, step }, at(now)))
  return { book, tick }
}
const none = new Set<string>()

test('nothing is said before the hour is over, and nothing where no pump went off', () => {
  const { book, tick } = night()
  expect(pumpNudges(book.world(), at('2027-06-15 23:30'), none)).toEqual([])
  tick('return-off', '2027-06-15 21:45')
  expect(pumpNudges(book.world(), at('2027-06-15 22:44'), none)).toEqual([])
  expect(nextRunNudge(book.world(), at('2027-06-15 22:00'))).toBe(at('2027-06-15 22:45'))
})

test('from then on it comes again until it is ticked, and what was slept through is not said after', () => {
  const { book, tick } = night()
  tick('return-off', '2027-06-15 21:45')
  const shown = new Set<string>()
  const said: string[] = []
  for (let minute = 0; minute <= 130; minute += 1) {
    const now = at(`2027-06-15 22:${'30'}`) + minute * 60_000
    for (const nudge of pumpNudges(book.world(), at('2027-06-15 22:30'), shown)) said.push(`early ${nudge.key}`)
    for (const nudge of pumpNudges(book.world(), now as ReturnType<typeof at>, shown)) {
      said.push(String(nudge.late))
      for (const claim of nudge.claims) shown.add(claim)
    }
  }
  expect(said).toEqual(['0', '3', '6', '10', '15', '20', '30', '45', '60', '90'])
  const slept = pumpNudges(book.world(), at('2027-06-15 23:02'), none)
  expect(slept).toMatchObject([{ late: 17, plannedAt: at('2027-06-15 23:00') }])
  expect(slept[0]?.claims).toHaveLength(5)
  expect(nextRunNudge(book.world(), at('2027-06-15 23:02'))).toBe(at('2027-06-15 23:05'))
  tick('return-on', '2027-06-15 23:03')
  expect(pumpNudges(book.world(), at('2027-06-15 23:30'), none)).toEqual([])
})

test('no hour is quiet for it, and it stands before everything else', () => {
  const { book, tick } = night()
  tick('return-off', '2027-06-15 21:45')
  const quiet = { from: '22:00', until: '07:00' } as never
  const asked = { shown: none, wishes: { ...usualWishes(london), quiet }, phone: { lastBackup: undefined } as never }
  expect(nudges(book.world(), at('2027-06-15 22:50'), asked)[0]).toMatchObject({ is: 'pumps', late: 5 })
})

test('in the morning it is asked once what is still off', () => {
  const { book, tick } = night()
  tick('skimmer-off', '2027-06-15 21:25')
  tick('return-off', '2027-06-15 21:45')
  tick('return-on', '2027-06-15 22:40')
  expect(morningNudges(book.world(), at('2027-06-16 07:29'), none)).toEqual([])
  const [nudge] = morningNudges(book.world(), at('2027-06-16 07:31'), none)
  expect(nudge?.open).toContain('skimmer-on')
  expect(morningNudges(book.world(), at('2027-06-16 08:00'), new Set(nudge?.claims))).toEqual([])
  expect(nextRunNudge(book.world(), at('2027-06-15 23:00'))).toBe(at('2027-06-16 07:30'))
})

test('a night that was stopped is loud until what was off is ticked as on, and in the morning only that is asked for', () => {
  const { book, tick } = night()
  tick('skimmer-off', '2027-06-15 21:25')
  tick('return-off', '2027-06-15 21:45')
  book.does((world) => stopRun(world, { run, because: 'fishBreathingHard' }, at('2027-06-15 21:50')))
  expect(pumpNudges(book.world(), at('2027-06-15 22:50'), none).map(({ late }) => late)).toEqual([5])
  tick('return-on', '2027-06-15 22:51')
  expect(pumpNudges(book.world(), at('2027-06-15 23:50'), none)).toEqual([])
  expect(morningNudges(book.world(), at('2027-06-16 07:31'), none).map(({ open }) => open)).toEqual([['skimmer-on']])
  tick('skimmer-on', '2027-06-16 07:32')
  expect(morningNudges(book.world(), at('2027-06-16 07:33'), none)).toEqual([])
})
