/** Nudges without a browser: who may show one, what it says, and what is written when it is answered. */
// @vitest-environment node
import 'fake-indexeddb/auto'
import { IDBFactory } from 'fake-indexeddb'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import type { Channel, Offer, Telling } from '../../app/reminders/channel.ts'
import { noteDosed } from '../../app/reminders/dosed.ts'
import { type Reach, reconcile } from '../../app/reminders/reconcile.ts'
import { type Device, keepMatter, openDevice } from '../../app/storage/device.ts'
import { importEntries } from '../../app/storage/importing.ts'
import { nothingSeen, openLedger, readAfter } from '../../app/storage/ledger.ts'
import { claimNudge, shownNudges } from '../../app/storage/nudges.ts'
import type { Ledger } from '../../app/storage/schema.ts'
import { dosedWords, nextNudgeText, standingText } from '../../app/words/nudges.ts'
import {
  type DeviceId,
  type Entry,
  type Fact,
  type FoodId,
  type Moment,
  nextNudge,
  type PlanId,
  skipNight,
  usualWishes,
  writtenBy,
} from '../../core/index.ts'
import { at, type Book, done, given, london } from '../support/given.ts'
import {
  amberFood,
  cockle,
  dose,
  foodOf,
  greenPlan,
  kitchenFridge,
  lab,
  onHand,
  planOf,
  redClip,
  tankOf,
  usGal,
} from '../support/givenLab.ts'

const plan = planOf({ first: '2026-11-25', amount: 1 })
const trays = onHand({ portions: 30, each: 1, frozen: '2026-10-01' })
const amber: FoodId = amberFood
const twoFoods = () =>
  given(
    lab,
    trays,
    plan,
    foodOf(amber, { name: 'Amber food' }),
    onHand({ portions: 9, each: 0.5, frozen: '2026-10-01', lot: redClip, food: amber, place: kitchenFridge }),
    planOf({ first: '2026-11-25', amount: 0.5, food: amber, plan: 'amberplan' as PlanId }),
  )
const minute = at('2026-11-25 21:20')
const plain = (text: string) => text.replace(/\s/g, ' ')

let ledger: Ledger
let device: Device
beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory())
  ledger = openLedger()
  device = openDevice()
})

const keep = async (book: Book, nudge = true) => {
  done(await importEntries(ledger, book.entries()))
  done(await keepMatter(device, 'nudge', nudge))
  done(await keepMatter(device, 'lastBackup', at('2026-11-20 12:00')))
}
const glass = (open = true) => {
  const shown: Telling[] = []
  const channel: Channel = { name: 'glass', open: () => open, show: async (telling) => void shown.push(telling) }
  return { shown, channel }
}
const reach = (channel: Channel, now: Moment = minute): Reach => ({
  now: () => now,
  ledger,
  device,
  channels: [channel],
  zone: london,
  woken: 'test',
})

describe('a nudge', () => {
  test('is shown once, by whichever of several comes first, and is on record', async () => {
    await keep(given(lab, trays, plan))
    const { shown, channel } = glass()
    const another: Reach = { ...reach(channel), ledger: openLedger(), device: openDevice() }
    await Promise.all([reconcile(reach(channel)), reconcile(another), reconcile(reach(channel))])
    await reconcile(reach(channel, at('2026-11-25 23:00')))
    expect(shown).toHaveLength(1)
    expect(done(await shownNudges(device))).toContain(shown[0]?.key)
    expect(shown[0]?.title).toBe('longgallery, tonight')
    expect(plain(shown[0]?.body ?? '')).toBe('One portion from blue clip, kitchen. Planned for 21:20.')
  })

  test('that cannot be shown for one tank keeps none from another', async () => {
    await keepMatter(device, 'wishes', { ...usualWishes(london), split: true })
    await keep(
      given(
        lab,
        tankOf(cockle, usGal(200)),
        trays,
        plan,
        planOf({ first: '2026-11-25', amount: 1, tank: cockle, plan: 'cockleplan' as PlanId }),
      ),
    )
    const asked: string[] = []
    const channel: Channel = {
      name: 'glass',
      open: () => true,
      show: async ({ title }) => {
        asked.push(title)
        if (asked.length === 1) throw new TypeError('no leave any more')
      },
    }
    expect(done(await reconcile(reach(channel))).count).toBe(1)
    expect(new Set(asked)).toEqual(new Set(['longgallery, tonight', 'cockle, tonight']))
  })

  test('is one for two tanks, and its "Dosed" is for both', async () => {
    const book = given(
      lab,
      tankOf(cockle, usGal(200)),
      trays,
      plan,
      planOf({ first: '2026-11-25', amount: 1, tank: cockle, plan: 'cockleplan' as PlanId }),
    )
    await keep(book)
    const { shown, channel } = glass()
    expect(done(await reconcile(reach(channel))).count).toBe(1)
    const [telling] = shown
    expect(telling?.title).toBe('longgallery and cockle, tonight')
    expect(plain(telling?.body ?? '')).toBe(
      'longgallery: one portion from blue clip, kitchen. cockle: one portion from blue clip, kitchen. Planned for 21:20.',
    )
    if (!telling?.offer) throw new Error('Nothing was offered')
    const dosed = await noteDosed(telling.offer, {
      now: () => minute,
      ledger,
      device,
      newDeviceId: () => 'wakened' as DeviceId,
    })
    expect(plain(dosedWords('key', telling.offer, dosed).body)).toBe(
      'Dosed 1 mL for longgallery and 1 mL for cockle. Undo is in the app.',
    )
  })

  test('is on disk before it is on the glass', async () => {
    await keep(given(lab, trays, plan))
    let known: ReadonlySet<string> = new Set()
    const channel: Channel = {
      name: 'glass',
      open: () => true,
      show: async () => {
        known = done(await shownNudges(device))
      },
    }
    expect(done(await reconcile(reach(channel))).count).toBe(1)
    expect(known).toContain('evening/2026-11-25/Europe/London')
  })

  test('names each food, its portion and its place, and late it still says when it was planned', async () => {
    await keep(twoFoods())
    const { shown, channel } = glass()
    await reconcile(reach(channel, at('2026-11-25 23:59')))
    const body = plain(shown[0]?.body ?? '')
    expect(body).toContain('Amber food: one portion from redclip, kitchen.')
    expect(body).toContain('greenfood: one portion from blue clip, kitchen.')
    expect(body).toMatch(/Planned for 21:20\.$/)
    expect(shown[0]?.offer?.doses.map(({ amount }) => amount).sort()).toEqual([1000, 500])
  })

  test('stays away when she did not ask for it, when the phone forbids it, and when nothing is due', async () => {
    const { shown, channel } = glass()
    await keep(given(lab, trays, plan), false)
    await reconcile(reach(channel))
    await keepMatter(device, 'nudge', true)
    const shut = glass(false)
    await reconcile(reach(shut.channel))
    await reconcile(reach(channel, at('2026-11-25 21:19')))
    await reconcile(reach(channel, at('2026-11-26 00:20')))
    expect([...shown, ...shut.shown]).toEqual([])
    expect(done(await shownNudges(device)).size).toBe(0)
    expect(done(await reconcile(reach(channel))).count).toBe(1)
  })
})

describe('"Dosed" on a nudge', () => {
  const offerOf = async (now = minute): Promise<Offer> => {
    const { shown, channel } = glass()
    await reconcile(reach(channel, now))
    const offer = shown[0]?.offer
    if (!offer) throw new Error('Nothing was offered')
    return offer
  }
  const touch = (offer: Offer, now: Moment) =>
    noteDosed(offer, { now: () => now, ledger, device, newDeviceId: () => 'wakened' as DeviceId })
  const inBook = async (): Promise<readonly Entry<Fact>[]> =>
    done(await readAfter(ledger, nothingSeen)).entries.filter(
      (entry): entry is Entry<Fact> => 'fact' in entry && entry.fact.kind === 'doseGiven',
    )

  test('is the dose it named, at that moment, written under the id this phone has', async () => {
    await keep(given(lab, trays, plan))
    const offer = await offerOf()
    const dosed = await touch(offer, at('2026-11-25 21:31'))
    expect(plain(dosedWords('key', offer, dosed).body)).toBe('Dosed 1 mL for longgallery. Undo is in the app.')
    const [entry, ...more] = await inBook()
    expect(more).toEqual([])
    expect(entry?.fact).toMatchObject({
      at: at('2026-11-25 21:31'),
      served: [{ plan: greenPlan, night: '2026-11-25', amount: 1000 }],
      taken: [{ from: 'portions', count: 1 }],
    })
    expect(entry && writtenBy(entry.id)).toBe('wakened')
    expect((await touch(offer, at('2026-11-25 21:40'))).done).toMatchObject({ refusal: { why: 'alreadyGiven' } })
  })

  test('twice at once is one dose, and both say that it is noted', async () => {
    await keep(given(lab, trays, plan))
    const offer = await offerOf()
    const both = await Promise.all([touch(offer, minute), touch(offer, minute)])
    expect(await inBook()).toHaveLength(1)
    expect(new Set(both.map((dosed) => dosedWords('key', offer, dosed).body)).size).toBe(1)
  })

  test('given in the app already, it writes nothing and says so quietly', async () => {
    const book = given(lab, trays, plan)
    await keep(book)
    const offer = await offerOf()
    book.does(dose(at('2026-11-25 21:25')))
    done(await importEntries(ledger, book.entries()))
    const dosed = await touch(offer, at('2026-11-25 21:31'))
    expect(await inBook()).toHaveLength(1)
    const words = dosedWords('key', offer, dosed)
    expect(words).toMatchObject({ title: 'Noted already', quiet: true })
    expect(plain(words.body)).toBe('1 mL is noted already for tonight, at 21:25.')
  })

  test('of two foods, one given already: the other is noted', async () => {
    const book = twoFoods()
    await keep(book)
    const offer = await offerOf()
    book.does(dose(at('2026-11-25 21:25')))
    done(await importEntries(ledger, book.entries()))
    const dosed = await touch(offer, at('2026-11-25 21:31'))
    expect(await inBook()).toHaveLength(2)
    expect(plain(dosedWords('key', offer, dosed).body)).toContain('Dosed 0.5 mL')
  })

  test('touched when its night is over, it is not put into another', async () => {
    await keep(given(lab, trays, plan))
    const offer = await offerOf()
    const dosed = await touch(offer, at('2026-11-26 10:30'))
    expect(await inBook()).toEqual([])
    const words = dosedWords('key', offer, dosed)
    expect(words.title).toBe('Not noted')
    expect(words.body).toContain('That night is over by now.')
    expect(words.offer).toBeUndefined()
  })

  test('with the plan gone or the disk broken it says what is wrong, and writes nothing', async () => {
    await keep(given(lab, trays, plan))
    const offer = await offerOf()
    const gone = { ...offer, doses: offer.doses.map((each) => ({ ...each, plan: 'gone' as PlanId })) }
    expect(dosedWords('key', offer, await touch(gone, minute)).body).toContain('There is no plan for this any more.')
    vi.spyOn(IDBDatabase.prototype, 'transaction').mockImplementation(() => {
      throw new DOMException('no more', 'QuotaExceededError')
    })
    const words = dosedWords('key', offer, await touch(offer, minute))
    vi.restoreAllMocks()
    expect(words).toMatchObject({ title: 'Not noted' })
    expect(words.body).toContain('This phone has no room left')
    expect(await inBook()).toEqual([])
  })
})

test('the next nudge in words', () => {
  const none: ReadonlySet<string> = new Set()
  const says = (book: Book, now: Moment) =>
    plain(nextNudgeText(nextNudge(book.world(), now, { shown: none, wishes: usualWishes(london) }), book.world(), now))
  const book = given(lab, trays, plan)
  expect(says(book, at('2026-11-25 12:00'))).toBe('Next: tonight at 21:20.')
  book.does((world) => skipNight(world, { plan: greenPlan }, at('2026-11-25 20:00')))
  expect(says(book, at('2026-11-25 20:05'))).toBe('Next: Friday night at 21:20.')
  expect(says(given(lab, plan), minute)).toBe('Nothing is planned that would need one.')
})

test('whatever stands in the way has its sentence, and points at the phone’s own alarm', () => {
  expect(standingText('unsupported')).toContain('alarm')
  expect(standingText('denied')).toContain('alarm')
  expect(standingText('lost')).toMatch(/^Nudges are off/)
  expect(standingText('on')).toBeUndefined()
})

describe('of the records on this phone', () => {
  const night = (day: string) => {
    const shownAt = at(`${day} 21:20`)
    return claimNudge(device, [`longgallery/${day}`], { plannedAt: shownAt, shownAt, via: 'glass' })
  }
  test('those older than sixty days go when a new one is written, and no others', async () => {
    for (const day of ['2026-09-26', '2026-09-27', '2026-11-23']) expect(done(await night(day))).toBe(true)
    expect(done(await shownNudges(device)).size).toBe(3)
    expect(done(await night('2026-11-25'))).toBe(true)
    expect([...done(await shownNudges(device))]).toEqual([
      'longgallery/2026-09-27',
      'longgallery/2026-11-23',
      'longgallery/2026-11-25',
    ])
  })
  test('none goes when the night is claimed already', async () => {
    const late = { plannedAt: minute, shownAt: at('2027-11-25 21:20'), via: 'glass' }
    done(await night('2026-11-25'))
    expect(done(await claimNudge(device, ['longgallery/2026-11-25'], late))).toBe(false)
    expect(done(await shownNudges(device)).size).toBe(1)
  })
})
