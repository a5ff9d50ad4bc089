/** A food's figures: the form’s fields, with what is usual for its kind to begin with. */
import {
  type FoodAsked,
  type FoodDescribed,
  type FoodId,
  type FoodKind,
  usualFood,
  type WaterUnit,
} from '../../../core/index.ts'
import { asTyped, typedMillilitres } from '../../words/numbers.ts'

export type KindFields = {
  readonly food: FoodId
  readonly name: string
  readonly sort: FoodKind
  readonly low: string
  readonly high: string
  readonly per: string
  readonly perUnit: WaterUnit
  readonly everyNights: string
  readonly life: string
  readonly lifeUnit: 'days' | 'months'
  readonly countsFrom: FoodDescribed['countsFrom']
  readonly freezes: 'yes' | 'no'
  readonly freezerLife: string
  readonly freezerUnit: 'days' | 'months'
  readonly shakes: 'yes' | 'no'
  readonly shakeHours: string
  /** Per cent. */
  readonly residue: string
  readonly contains: 'notKnown' | 'dry' | 'cells'
  /** Grams in a millilitre; million cells in one; picograms a cell; per cent of the dry matter. */
  readonly dry: string
  readonly cells: string
  readonly cellPicograms: string
  readonly nitrogen: string
  readonly phosphorus: string
}

type Figures = Omit<FoodAsked, 'food' | 'name' | 'contents'>
type ContentsFields = Pick<KindFields, 'contains' | 'dry' | 'cells' | 'cellPicograms' | 'nitrogen' | 'phosphorus'>
/** 0.03 is 3 %, although 0.07 × 100 is 7.000000000000001. */
const percent = (share: number): string => String(Number((share * 100).toFixed(4)))

export const contentsFields = (contents: FoodAsked['contents']): ContentsFields => {
  const typed = (value: number | undefined) => (value === undefined ? '' : asTyped(value))
  const share = (value: number | undefined) => (value === undefined ? '' : percent(value))
  return {
    contains: contents?.dry !== undefined ? 'dry' : contents?.cells !== undefined ? 'cells' : 'notKnown',
    dry: typed(contents?.dry),
    cells: typed(contents?.cells === undefined ? undefined : contents.cells / 1e6),
    cellPicograms: typed(contents?.cellPicograms),
    nitrogen: share(contents?.nitrogen),
    phosphorus: share(contents?.phosphorus),
  }
}

export const figureFields = (figures: Figures): Omit<KindFields, 'food' | 'name' | keyof ContentsFields> => ({
  sort: figures.sort,
  low: typedMillilitres(figures.band.low),
  high: typedMillilitres(figures.band.high),
  per: asTyped(figures.band.per.value),
  perUnit: figures.band.per.unit,
  everyNights: String(figures.everyNights),
  life: String(figures.fridgeLife.count),
  lifeUnit: figures.fridgeLife.unit,
  countsFrom: figures.countsFrom,
  freezes: figures.freezerLife ? 'yes' : 'no',
  freezerLife: String(figures.freezerLife?.count ?? 24),
  freezerUnit: figures.freezerLife?.unit ?? 'months',
  shakes: figures.shakeHours === undefined ? 'no' : 'yes',
  shakeHours: String(figures.shakeHours ?? 24),
  residue: percent(figures.residueShare),
})

export const newKindFields = (food: FoodId): KindFields => ({
  food,
  name: '',
  ...figureFields(usualFood.freshNonViable),
  ...contentsFields(undefined),
})
export const knownKindFields = (food: FoodDescribed): KindFields => ({
  food: food.food,
  name: food.name,
  ...figureFields(food),
  ...contentsFields(food.contents),
})
