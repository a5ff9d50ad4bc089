/** Refusals only a tank's form makes, as sentences; every other goes its usual way. */
import type { ExactRefusal } from '../../core/index.ts'
import { number } from './numbers.ts'
import type { Reading } from './reading.ts'
import { type AnyRefusal, refusalText } from './refusals.ts'

export type WaterFormRefusal = AnyRefusal | ExactRefusal

const centimetres = (length: number): string => `${number(length)}\u00a0cm`

export const waterRefusalText = (refusal: WaterFormRefusal, reading: Reading): string => {
  switch (refusal.why) {
    case 'bowTooDeep':
      return `A bow reaches at most half the length of the front, ${centimetres(refusal.most)} here. Measure it from the line between the front corners to the middle of the glass.`
    case 'glassTooThick':
      return 'Glass this thick leaves no room inside. It is asked in millimetres.'
    case 'noHeight':
      return 'With this base and so far below the rim no height is left for water.'
    case 'sandTooDeep':
      return `The sand would stand above the water, which is ${centimetres(refusal.height)} deep.`
    case 'allRock':
      return 'So much sand and rock leaves no water in the tank.'
    default:
      return refusalText(refusal, reading)
  }
}
