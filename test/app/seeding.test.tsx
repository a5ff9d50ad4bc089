/** What is said in the night live bottles are poured: every step by its device and deed, every lateness, every refusal. */
import { describe, expect, test } from 'vitest'
import { alarmsFile } from '../../app/reminders/calendarFile.ts'
import {
  beforeAnswer,
  gapWords,
  hoursOffWords,
  lateWords,
  notKnownWords,
  pourNightWords,
  pumpsOffWords,
  readyHabit,
  saltWords,
} from '../../app/words/seeding.ts'
import { seedingRefusal } from '../../app/words/seedingRefusals.ts'
import { stepName } from '../../app/words/steps.ts'
import { stepTold } from '../../app/words/stepTold.ts'
import { day, deviceSorts, gaps, moment, pourNights, stepsOf, tankAt, type WaterPlace } from '../../core/index.ts'
import { at, given, london } from '../support/given.ts'
import { lab, longGallery, tankOf, usGal } from '../support/givenLab.ts'

const plain = (text: string) => text.replace(/\u00a0/g, ' ')
const everywhere: readonly WaterPlace[] = ['display', 'sump', 'refugium']
/** All there is, twice: a second one of a sort has a number. */
const everything = {
  devices: deviceSorts.flatMap((device) => [
    { key: device, device, stops: true },
    { key: `${device}-2`, device, stops: true },
  ]),
  places: everywhere.map((place) => ({ place, mayBeLit: false })),
}
const steps = (['before', 'after', 'half'] as const).flatMap((waterOut) =>
  stepsOf(everything, {
    pours: everywhere.map((into) => ({ into, bottles: 1 })),
    waterOut,
    off: at('2027-06-15 21:40'),
    morning: at('2027-06-16 07:30'),
  }).map(({ step }) => step),
)
const all = [...new Set(steps)]
const reading = { today: day('2027-06-15'), zone: london }

describe('steps', () => {
  test('there are as many as devices, twice, and places make', () => {
    // 24 devices off and on, three places darkened and poured into, the level, water before and after, the morning look.
    expect(all).toHaveLength(24 * 2 + 3 * 2 + 1 + 2 + 1)
  })

  test.each(all)('%s has a name of its own, and words to do it by', (step) => {
    const { say, note } = stepTold(step)
    for (const said of [stepName(step), say, note ?? 'It is.']) {
      expect(said).toMatch(/^[A-Z]\S*(\s\S+)*$/u)
      expect(said).not.toMatch(/undefined|\b[a-z]+[A-Z]\w*/u)
    }
    expect(all.filter((other) => stepName(other) === stepName(step))).toHaveLength(1)
  })

  test('a few, word for word', () => {
    expect(stepName('wave-off')).toBe('Wave pumps off')
    expect(plain(stepName('wave-2-off'))).toBe('Wave pump 2 off')
    expect(stepName('return-on')).toBe('Return pump on')
    expect(stepTold('uv-off')).toEqual({ say: 'Switch off the UV lamp', note: 'It kills what you pour.' })
    expect(stepTold('sock-in').say).toBe('Put the sock or floss back in')
    const left = () => ({ name: 'left' })
    expect(stepName('return-2-off', left)).toBe('Return pump “left” off')
    expect(stepTold('return-2-on', left).say).toBe('Switch the return pump “left” back on')
    expect(plain(stepName('return-off', () => ({ nth: 1 })))).toBe('Return pump 1 off')
    expect(stepName('return-2-off', () => ({}))).toBe('Return pump off')
    expect(stepName('moon-off')).toBe('Moon off')
    expect(stepName('something-newer')).toBe('Something newer')
  })
})

describe('sentences', () => {
  test('lateness and hours off', () => {
    expect([1, 17, 60, 125].map(lateWords).map(plain)).toEqual([
      '1 minute late',
      '17 minutes late',
      '1 hour late',
      '2 hours and 5 minutes late',
    ])
    expect([0.25, 10 + 5 / 60, 2].map(hoursOffWords).map(plain)).toEqual([
      'off for 15 min',
      'off for 10 h 5 min',
      'off for 2 h',
    ])
    expect(plain(pumpsOffWords('Long Gallery', 17))).toBe('Switch the pumps of Long Gallery on: 17 minutes late.')
  })

  test('what a pour does to the salt', () => {
    const shift = { before: 35, after: 34.9502, change: -0.0498, notable: false }
    expect(plain(saltWords(shift))).toBe('The salt goes from 35 to 34.95 ‰: too little to do anything about.')
    expect(plain(saltWords({ ...shift, after: 35.001 }))).toBe('The salt stays at 35 ‰.')
    expect(plain(saltWords({ ...shift, after: 34.4, notable: true }))).toMatch(/from 35 to 34.4 ‰, over half a part/)
    expect(seedingRefusal({ why: 'notSalinity', typed: 1.025, of: 'tankSalt' }, reading)).toMatch(/specific gravity/)
    expect(seedingRefusal({ why: 'notSalinity', typed: 60, of: 'bottleSalt' }, reading)).toMatch(/^Between 2 and 45/)
  })

  test('refused water, light and lamps, with what would settle it', () => {
    expect(seedingRefusal({ why: 'treatedWater', with: 'copper' }, reading)).toMatch(/copper.*kills/)
    expect(seedingRefusal({ why: 'displayLit', dark: at('2027-06-15 21:00') }, reading)).toMatch(/lit until 21:00/)
    expect(seedingRefusal({ why: 'killsWhatIsPoured', device: 'uv' }, reading)).toMatch(/UV lamp would stay on/)
    expect(seedingRefusal({ why: 'noSuchTank' }, reading)).toMatch(/not on record/)
  })

  test('what stands in the way is said one by one, and what is not said is no fault', () => {
    const found = gaps({ ammonia: 0.5, celsius: 29, salinity: 1.025, copper: 'inTheWater', film: false })
    const said = found.flatMap((gap) => (gap.gap === 'notKnown' ? [] : [plain(gapWords(gap))]))
    expect(said).toHaveLength(5)
    for (const says of said) expect(says).toMatch(/^[A-Z0-9].+[.]$/)
    expect(notKnownWords(found)).toBe('Not said yet: nitrite.')
    expect(plain(readyHabit)).toMatch(/^22 to 27 °C, 33 to 36 ‰ .*common practice; your bottle’s label goes first\.$/)
    const world = given(tankOf(longGallery, usGal(200), { name: 'Long Gallery' }), lab.slice(1)).world()
    const tank = tankAt(world, longGallery, at('2027-06-15 18:00'))
    if (!tank) throw new Error('no tank')
    const needed = { bottles: 3, exact: 2.7 }
    expect(beforeAnswer({ tank, treated: undefined, gaps: gaps({}), needed })).toMatch(
      /^Three live bottles for Long Gallery/,
    )
    expect(beforeAnswer({ tank, treated: undefined, gaps: found, needed })).toMatch(/^Wait .* five things stand/)
    expect(beforeAnswer({ tank, treated: 'copper', gaps: [], needed })).toMatch(/^No live bottles .* copper/)
    const came = at('2027-06-15 19:00')
    expect(pourNights(world, tank, came, came).map((night) => pourNightWords(night, tank, came))).toEqual([
      'Tonight: best, dark from 21:00',
      'Tomorrow night: still fine, dark from 21:00',
      'Thursday night: a decision by now, dark from 21:00',
    ])
  })

  test('the alarms’ file has one event and one alarm for each hour', () => {
    const file = alarmsFile(
      [
        { key: 'pumps-run1', at: moment(Date.UTC(2027, 5, 15, 21, 40)), summary: 'Pumps' },
        { key: 'morning-run1', at: moment(Date.UTC(2027, 5, 16, 6, 30)), summary: 'Morning' },
      ],
      moment(Date.UTC(2027, 5, 15, 18)),
    )
    expect(file.match(/DTSTART:\S+/g)).toEqual(['DTSTART:20270615T214000Z', 'DTSTART:20270616T063000Z'])
    expect(file.match(/BEGIN:VALARM/g)).toHaveLength(2)
    expect(file.endsWith('END:VCALENDAR\r\n')).toBe(true)
  })
})
