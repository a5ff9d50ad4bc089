/** The app's own storage and state without screens, timed beside the bare thing they stand on. */
import { request, start } from '../../../app/state/store.ts'
import { type Entry, type Fact, giveDose, tonight } from '../../../core/index.ts'
import { foldBesideParse } from '../foldBeside.ts'
import { median } from '../median.ts'
import { walkBesideFold } from '../walkBeside.ts'
import { type BareDisk, openBareDisk } from './bareDisk.ts'
import { watchTheDisk } from './watchTheDisk.ts'

/** One touch on "Dosed", confirmed as another one of the same night so that it may be repeated. */
const dose = async (): Promise<Entry<Fact>> => {
  const done = await request((world, context) => {
    const [line] = tonight(world, context.now)
    const [serving] = line?.servings ?? []
    if (!line || !serving) throw new Error('Nothing can be given tonight')
    const { taken, amount } = serving
    const asked = { plan: line.plan.plan, taken: [taken], amount, at: context.now, again: true, sure: true }
    return giveDose(world, asked, context.now)
  })
  if (!done.ok) throw new Error(`The dose was refused: ${JSON.stringify(done.refusal)}`)
  const [entry] = done.value
  if (!entry) throw new Error('Nothing was written')
  return entry
}

const milliseconds = async (work: () => Promise<unknown>): Promise<number> => {
  const began = performance.now()
  await work()
  return performance.now() - began
}

/** In turns, each followed by a pause in which the app's own housekeeping and the disk come to rest. */
const tapBesideAdd = async (times: number) => {
  const disk: BareDisk = await openBareDisk()
  const spent = { tap: [] as number[], add: [] as number[], told: [] as number[] }
  const lastDurable = watchTheDisk()
  const rest = () => new Promise((resolve) => setTimeout(resolve, 60))
  let written = await dose()
  for (let turn = 0; turn < times; turn += 1) {
    await rest()
    spent.add.push(await milliseconds(() => disk.add({ entry: written, codec: 1 })))
    await rest()
    const tapped = performance.now()
    written = await dose()
    spent.told.push(performance.now() - tapped)
    spent.tap.push(lastDurable() - tapped)
  }
  disk.close()
  const [tap, add, told] = [median(spent.tap), median(spent.add), median(spent.told)]
  return { tap, add, told, ratio: tap / add }
}

const timed = {
  started: start(),
  tapBesideAdd,
  foldBesideParse,
  walkBesideFold,
}
declare global {
  interface Window {
    timed: typeof timed
  }
}
window.timed = timed
