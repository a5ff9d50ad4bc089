/** Households in the night live bottles are poured. */
import {
  type Entry,
  type Fact,
  notePour,
  type ParcelId,
  planSeeding,
  type RunId,
  recordArrival,
  tickStep,
} from '../../core/index.ts'
import { at, type Book, given } from '../support/given.ts'
import { longGallery, mL, tankOf, usGal } from '../support/givenLab.ts'
import { equipmentOf } from '../support/givenSeeding.ts'

const run = 'run1' as RunId
const parcel = 'parcel1' as ParcelId
const equipment = equipmentOf(['topOff', 'sock', 'skimmer', 'uv', 'return', 'wave', 'sumpHeater'])
const day = '2026-11-25'

const atTheDoor = (runs = equipment): Book => {
  const book = given(tankOf(longGallery, usGal(108.33), { name: 'Long Gallery' }), runs)
  book.does(() =>
    recordArrival(
      {
        parcel,
        came: at(`${day} 17:40`),
        bottles: [{ animals: 'copepods', count: 3, holds: mL(473) }],
        claimHours: 24,
        looked: 'stillCold',
      },
      at(`${day} 17:45`),
    ),
  )
  return book
}
const planned = (runs = equipment): Book => {
  const book = atTheDoor(runs)
  book.does((world) =>
    planSeeding(
      world,
      {
        run,
        tank: longGallery,
        parcel,
        animals: ['copepods'],
        pours: [
          { into: 'display', bottles: 2 },
          { into: 'refugium', bottles: 1 },
        ],
        holds: mL(473),
        waterOut: 'after',
        rinse: { each: mL(100), of: 'newSaltWater' },
        tankSalt: 35,
        bottleSalt: 28,
        off: at(`${day} 21:40`),
        morning: at('2026-11-26 07:30'),
      },
      at(`${day} 18:00`),
    ),
  )
  return book
}
const pumpsOff = (): Book => {
  const book = planned()
  const ticks = [
    ['topOff-off', '21:10'],
    ['sock-out', '21:11'],
    ['dark-display', '21:20'],
    ['skimmer-off', '21:25'],
    ['uv-off', '21:25'],
    ['return-off', '21:40'],
    ['level', '21:43'],
    ['sumpHeater-off', '21:43'],
  ] as const
  for (const [step, clock] of ticks) book.does((world) => tickStep(world, { run, step }, at(`${day} ${clock}`)))
  return book
}
/** The display is poured, the refugium and the water are still to come. */
const halfWay = (): readonly Entry<Fact>[] => {
  const book = pumpsOff()
  const now = at(`${day} 21:47`)
  book.does((world) => notePour(world, { run, into: 'display', bottles: 2, amount: mL(946), rinse: mL(200) }, now))
  book.does((world) => tickStep(world, { run, step: 'pour-display' }, now))
  return book.entries()
}

/** Two return pumps and two wave pumps, one of which runs on; all is off but the pumps. */
const severalPumps = (): readonly Entry<Fact>[] => {
  const book = planned({
    ...equipment,
    devices: [
      ...equipment.devices.map((it) => (it.key === 'return' ? { ...it, name: 'left' } : it)),
      { key: 'return-2', device: 'return', name: 'over the overflow', stops: true },
      { key: 'wave-2', device: 'wave', stops: true },
    ],
  })
  for (const step of ['topOff-off', 'sock-out', 'dark-display', 'skimmer-off', 'uv-off'])
    book.does((world) => tickStep(world, { run, step }, at(`${day} 21:25`)))
  return book.entries()
}

export const householdsSeeding = {
  liveBottlesCame: () => atTheDoor().entries(),
  nightPlanned: () => planned().entries(),
  nightPumpsOff: () => pumpsOff().entries(),
  nightHalfWay: halfWay,
  severalPumps,
}
