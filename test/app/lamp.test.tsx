/** The lamp's clock on the tank's page: what is off, what she did about it, and what she takes back. */
import 'fake-indexeddb/auto'
import { render, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, describe, expect, test, vi } from 'vitest'
import { Lamp } from '../../app/screens/Water/Lamp.tsx'
import { fieldsOf, newTankFields, readTank } from '../../app/screens/Water/tankFields.ts'
import * as clockOfPhone from '../../app/state/clock.ts'
import { currentWorld, request, start } from '../../app/state/store.ts'
import { bothClocks } from '../../app/words/bothClocks.ts'
import { duration, lampShort, lampTexts } from '../../app/words/lamp.ts'
import { day, type Fact, lampAsk, ok, type TankDescribed, tankAt, type World } from '../../core/index.ts'
import { at, done, given, london, zone } from '../support/given.ts'
import { lab, longGallery, tankOf, usGal } from '../support/givenLab.ts'

const plain = (text: string) => text.replace(/\u00a0/g, ' ')
const dial = tankOf(longGallery, usGal(200), { lamp: 'dial', name: 'Long Gallery' })
const cut = (when: string, minutes: number): Fact => ({ kind: 'powerCut', at: at(when), minutes, tanks: [longGallery] })
const tankIn = (world: World): TankDescribed => {
  const tank = tankAt(world, longGallery, at('2028-01-01 12:00'))
  if (!tank) throw new Error('no tank')
  return tank
}
const texts = (facts: readonly Fact[], now: string) => {
  const world = given(facts, lab.slice(1)).world()
  const ask = lampAsk(world, tankIn(world), at(now))
  return { texts: ask ? lampTexts(ask).map(plain) : [], short: ask ? plain(lampShort(ask, false)) : '' }
}

describe('what is said of it', () => {
  test('late by a clock change and a power cut, with both ways out', () => {
    expect(texts([...dial, cut('2027-04-02 14:00', 50)], '2027-04-02 18:00').texts).toEqual([
      'Your lamp will go out at 22:50 by the wall, 1 h 50 late. Turn the dial forward 1 h 50, or leave it: the small life does not mind, and the nudges go by the lamp.',
    ])
  })

  test('a change of the clocks, three days ahead', () => {
    const { texts: said, short } = texts(dial, '2027-03-25 18:00')
    expect(said).toEqual([
      'On Sunday, 28 March, the clocks go forward 1 h. This lamp does not know. Left alone, it goes out at 22:00 by the wall from then on. Turn the dial forward 1 h that day, or leave it: the small life does not mind, and the nudges go by the lamp.',
    ])
    expect(short).toBe('On Sunday the clocks go forward 1 h, and the lamp does not know.')
    expect(texts(dial, '2027-03-24 18:00').texts).toEqual([])
  })

  test('a change that puts a lamp right again asks for nothing', () => {
    const [tonight, change] = texts(dial, '2027-10-29 18:00').texts
    expect(tonight).toMatch(/^Your lamp will go out at 22:00 by the wall, 1 h late\./)
    expect(change).toBe(
      'On Sunday, 31 October, the clocks go back 1 h. This lamp does not know. Left alone, it is right from then on.',
    )
  })

  test('a clock that forgot the time is asked about, not guessed at', () => {
    const forgets = tankOf(longGallery, usGal(200), { lamp: 'losesTime' })
    expect(texts([...forgets, cut('2027-02-02 14:00', 10)], '2027-02-02 18:00').texts[0]).toContain(
      'Look when it goes out',
    )
  })

  test('lengths of time as a dial has them', () => {
    expect([5, 60, 110, 120, 245].map(duration).map(plain)).toEqual(['5 min', '1 h', '1 h 50', '2 h', '4 h 5'])
  })

  test('abroad, both clocks; at home, one', () => {
    const out = at('2027-08-14 21:00')
    expect(plain(bothClocks(out, london, zone('Asia/Tokyo')) ?? '')).toBe(
      '21:00 at the tank, 05:00 Sunday, 15 August here',
    )
    expect(plain(bothClocks(out, london, zone('Europe/Paris')) ?? '')).toBe('21:00 at the tank, 22:00 here')
    expect(bothClocks(out, london, london)).toBeUndefined()
    expect(bothClocks(at('2027-01-14 21:00'), london, zone('Africa/Abidjan'))).toBeUndefined()
  })
})

describe('the form', () => {
  test('keeps the kind of clock, and says nothing where it follows the clocks', () => {
    const fields = { ...newTankFields(london), volume: '200', unit: 'usGal' as const }
    const read = (lamp: typeof fields.lamp) =>
      done(readTank(longGallery, { ...fields, lamp }, at('2027-01-01 12:00')))[0]
    expect(read('followsClocks')).not.toHaveProperty('lamp')
    for (const lamp of ['dial', 'ownClock', 'losesTime'] as const) {
      expect(read(lamp).lamp).toBe(lamp)
      expect(fieldsOf(read(lamp)).lamp).toBe(lamp)
    }
    expect(fieldsOf(read('followsClocks')).lamp).toBe('followsClocks')
  })
})

describe('at the tank', () => {
  beforeAll(() => start())
  afterEach(() => vi.restoreAllMocks())
  const begin = async () => {
    const now = at('2027-04-02 18:00')
    vi.spyOn(Date, 'now').mockReturnValue(now)
    if (currentWorld().tanks.size === 0)
      done(await request<never>(() => ok([...dial, ...lab.slice(1), cut('2027-04-02 14:00', 50)])))
    const world = currentWorld()
    const reading = { world, now, zone: london, today: day('2027-04-02') } as Parameters<typeof Lamp>[0]['reading']
    return { tank: tankIn(world), reading }
  }
  const late = () => {
    const world = currentWorld()
    return lampAsk(world, tankIn(world), clockOfPhone.now())?.tonight.late ?? 0
  }

  test('put right with one touch, and taken back with one', async () => {
    render(<Lamp {...(await begin())} />)
    expect(late()).toBe(110)
    await userEvent.click(screen.getByRole('button', { name: /^It is right again: out at 21:00/ }))
    await screen.findByText(/Noted: the lamp goes out at 21:00/)
    expect(late()).toBe(0)
    await userEvent.click(screen.getByRole('button', { name: 'Undo' }))
    await waitFor(() => expect(late()).toBe(110))
  })

  test('a power cut is one number; what is no number, none, or too long has its sentence, and stays typed', async () => {
    render(<Lamp {...(await begin())} />)
    await userEvent.click(screen.getByText('The lamp’s clock'))
    const field = screen.getByRole('textbox', { name: /The power was away for/ })
    const note = screen.getByRole('button', { name: /^Note it/ })
    for (const [typed, says] of [
      ['', /Nothing is entered/],
      ['0', /Whole minutes/],
      ['12.5', /Whole minutes/],
      ['99999', /Longer than 14 days/],
    ] as const) {
      await userEvent.clear(field)
      if (typed) await userEvent.type(field, typed)
      await userEvent.click(note)
      await screen.findByText(says)
      expect(field).toHaveProperty('value', typed)
    }
    await userEvent.clear(field)
    await userEvent.type(field, '20')
    await userEvent.click(note)
    await screen.findByText(/20 min without power/)
    expect(late()).toBe(130)
  })
})
