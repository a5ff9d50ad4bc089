/** How much water there truly is, said the same way at the form and at the tank. */
import {
  doseWater,
  type ExactWater,
  exactLitres,
  grossLitres,
  litres,
  measuresOf,
  statedIsFarOff,
  type TankWater,
  trueRange,
  trueWater,
  usGallons,
  type WaterAmount,
} from '../../core/index.ts'
import { about, number } from './numbers.ts'
import { howMuch } from './plan.ts'

type Row = { readonly term: string; readonly fact: string; readonly note?: string }

/** One bucket as most households have it; below two and above a hundred nobody counts them. */
const bucket = 10

/** "about 259 litres", with the gallons, and the range that sand and rock leave. */
export const trueVolume = (of: TankWater): Row | undefined => {
  const real = trueWater(of)
  if (!real) return undefined
  const between = rangeWords(of)
  const note = `about ${about(usGallons(real))} US gallons${between ? `; ${between}, as sand and rock differ` : ''}`
  return { term: 'True volume', fact: `about ${about(litres(real))} litres`, note }
}

const rangeWords = (of: TankWater): string | undefined => {
  const range = trueRange(of)
  if (!range || about(range.low) === about(range.high)) return undefined
  return `about ${about(range.low)} to ${about(range.high)} litres`
}

/** Beneath the fields while they are typed: what to hold the true volume against. */
export const volumeRows = (of: TankWater): readonly Row[] => {
  const real = trueWater(of)
  if (!real) return []
  const exact = measuresOf(of)
  const reckoned = exact && exactLitres(exact)
  const gross = exact && grossLitres(exact)
  const between = rangeWords(of)
  const buckets = Math.round(litres(real) / bucket)
  return [
    { term: 'In US gallons', fact: `about ${about(usGallons(real))}` },
    ...(buckets < 2 || buckets > 100 ? [] : [{ term: `Buckets of ${bucket}\u00a0litres`, fact: `about ${buckets}` }]),
    ...(between ? [{ term: 'As sand and rock differ', fact: between }] : []),
    ...(reckoned && (of.measured || !between)
      ? [{ term: 'By the measurements', fact: byMeasures(exact, reckoned) }]
      : []),
    ...(gross ? [{ term: 'Outside, with glass and air', fact: `${number(gross)} litres` }] : []),
    ...(of.stated ? [statedRow(of, of.stated)] : []),
  ]
}

/** To the hundredth, so that it can be checked; where sand and rock leave it open that would be false. */
const byMeasures = ({ solids }: ExactWater, reckoned: number): string =>
  solids.by === 'share' ? `${number(reckoned)} litres` : `about ${about(reckoned)} litres`

const statedRow = (of: TankWater, stated: WaterAmount): Row => ({
  term: 'The number you go by',
  fact: howMuch(stated, of.about),
  ...(statedIsFarOff(of) ? { note: 'Far from the true volume. Is its unit right, and every measurement?' } : {}),
})

/** What doses go by. A figure she gave stands as she gave it, a reckoned one is as exact as it deserves. */
export const doseWaterWords = (of: TankWater): string => {
  const dosed = doseWater(of)
  return !dosed || dosed === of.stated || dosed === of.measured
    ? howMuch(dosed, of.about)
    : `about ${about(litres(dosed))} litres`
}

/** At a tank: the water its doses go by, and the other of the two volumes beside it. */
export const tankWaterRows = (of: TankWater): readonly Row[] => {
  const dosed = doseWater(of)
  const real = trueVolume(of)
  if (of.doseBy === 'true' && real)
    return [
      { term: 'Water', fact: doseWaterWords(of), note: `true volume; ${real.note}` },
      ...(of.stated ? [{ term: 'The number you go by', fact: howMuch(of.stated, of.about) }] : []),
    ]
  const note = dosed && `${about(litres(dosed))} litres, ${about(usGallons(dosed))} US gallons`
  return [{ term: 'Water', fact: doseWaterWords(of), ...(note ? { note } : {}) }, ...(real ? [real] : [])]
}

/** "about 400 litres; truly about 352": one step of a tank's history. */
export const volumeHeldWords = (of: TankWater): string => {
  const real = trueWater(of)
  if (!real || !of.stated) return doseWaterWords(of)
  const [said, truly] = [of.stated, real].map((amount) => about(litres(amount)))
  return `${howMuch(of.stated, of.about)}${said === truly ? '' : `; truly about ${truly} litres`}`
}
