/** Litres of water by measurements. The shapes are plain geometry; what stands in the display has its source beside it. */
import { litres } from '../basis/amounts.ts'
import type { ExactWater, TankShape, TankWater } from './facts.ts'

/**
 * Share of a bed of sand that is water. Wet-packed sands hold 0.279 (very poorly sorted) to 0.424 (very well sorted): Beard and
 * Weyl 1973, AAPG Bulletin 57:349–369. 0.40 between 0.30 and 0.45 for graded aquarium sand: our own judgement.
 */
const waterInSand = { least: 0.3, usual: 0.4, most: 0.45 }
/** Kilograms of rock, dry, to a litre that is no water: its pores fill. 2.0, between 1.5 and 2.5: common practice, no source. */
const kgPerLitre = { least: 1.5, usual: 2, most: 2.5 }
type Figure = keyof typeof waterInSand

/** Floor of the shape in cm²; undefined for a form of a newer version. */
export const floorOf = (shape: TankShape): number | undefined => {
  switch (shape.form) {
    case 'rectangle':
      return shape.length * shape.width
    case 'cylinder':
      return Math.PI * (shape.diameter / 2) ** 2
    case 'hexagon':
      return ((3 * Math.sqrt(3)) / 2) * shape.side ** 2
    case 'bowFront':
      return shape.length * shape.width + segment(shape.length, shape.bow)
    default:
      return undefined
  }
}

/** A circle through the ends of the chord and the tip of the bow. */
const radius = (chord: number, bow: number): number => (chord ** 2 / 4 + bow ** 2) / (2 * bow)
/** Between chord and circle: R²·acos((R − s)/R) − (R − s)·√(2Rs − s²), with the angle written so that a flat bow loses no figures. */
const segment = (chord: number, bow: number): number => {
  if (bow <= 0) return 0
  const around = radius(chord, bow)
  return around ** 2 * 2 * Math.atan((2 * bow) / chord) - ((around - bow) * chord) / 2
}

const atLeast0 = (value: number): number => Math.max(0, value)

/** The same shape inside its glass, `thick` centimetres all round; bent glass is as thick as the rest, so both its faces have one centre. */
const within = (shape: TankShape, thick: number): TankShape => {
  switch (shape.form) {
    case 'rectangle':
      return { ...shape, length: atLeast0(shape.length - 2 * thick), width: atLeast0(shape.width - 2 * thick) }
    case 'cylinder':
      return { ...shape, diameter: atLeast0(shape.diameter - 2 * thick) }
    case 'hexagon':
      return { ...shape, side: atLeast0(shape.side - (2 * thick) / Math.sqrt(3)) }
    case 'bowFront': {
      const around = radius(shape.length, shape.bow)
      const length = atLeast0(shape.length - 2 * thick)
      const toCorner = Math.sqrt(atLeast0((around - thick) ** 2 - (length / 2) ** 2))
      return {
        ...shape,
        length,
        width: atLeast0(shape.width - thick - (around - shape.bow) + toCorner),
        bow: atLeast0(around - thick - toCorner),
      }
    }
    default:
      return shape
  }
}

/** The display inside: its floor in cm², the height of its water in cm, neither below 0. */
export const displayOf = ({
  shape,
  measures,
}: ExactWater): { readonly floor: number | undefined; readonly height: number } =>
  measures.taken === 'inside'
    ? { floor: floorOf(shape), height: measures.waterline }
    : {
        floor: floorOf(within(shape, measures.glass / 10)),
        height: atLeast0(measures.height - measures.base / 10 - measures.down),
      }

/**
 * Litres, not below 0: the display up to its waterline, less what is no water in it, plus what runs in sump and refugium.
 * @param figure which end of the bands for sand and rock
 */
export const exactLitres = (exact: ExactWater, figure: Figure = 'usual'): number | undefined => {
  const { floor, height } = displayOf(exact)
  if (floor === undefined) return undefined
  const display = (floor * height) / 1000
  const { solids, sump, refugium } = exact
  const dry =
    solids.by === 'share'
      ? display * solids.share
      : (floor * Math.min(solids.sandDepth ?? 0, height) * (1 - waterInSand[figure])) / 1000 +
        (solids.rockKg ?? 0) / kgPerLitre[figure]
  return atLeast0(display - dry) + (sump ? litres(sump) : 0) + (refugium ? litres(refugium) : 0)
}

/** The measurements, in whichever of the two ways they were noted. */
export const measuresOf = ({ exact, inside }: TankWater): ExactWater | undefined => {
  if (exact || !inside) return exact
  const { waterline, ...shape } = inside.shape
  const solids = { by: 'share', share: inside.solids } as const
  return { shape, measures: { taken: 'inside', waterline }, solids, ...(inside.sump ? { sump: inside.sump } : {}) }
}
