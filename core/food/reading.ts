/** Amounts of food and money as typed. */
import { type BottleUnit, bottleAmount, type Microlitres, toMillilitres } from '../basis/amounts.ts'
import { type NumberRefusal, readNumber } from '../basis/numbers.ts'
import { ok, type Result, refuse } from '../basis/result.ts'
import type { Price } from './facts.ts'

export type AmountRefusal =
  | NumberRefusal
  | { readonly why: 'notPositive'; readonly typed: string }
  /** Millilitres; more than any household has, so a slip of the finger. */
  | { readonly why: 'tooMuch'; readonly most: number }

/** A thousand litres: beyond it the ledger itself would not read the figure back. */
const mostMillilitres = 1_000_000
export type ReadSize = { readonly value: number; readonly unit: BottleUnit; readonly amount: Microlitres }

/** Reads an amount of food as typed, keeping the number and unit as they were. */
export const readSize = (typed: string, unit: BottleUnit): Result<ReadSize, AmountRefusal> => {
  const number = readNumber(typed)
  if (!number.ok) return number
  const { value } = number
  // No unit of ours is smaller than a millilitre, and what is too much must not be reckoned with.
  if (value > mostMillilitres) return refuse({ why: 'tooMuch', most: mostMillilitres })
  const amount = bottleAmount(Math.max(0, value), unit)
  if (amount <= 0) return refuse({ why: 'notPositive', typed })
  if (toMillilitres(amount) > mostMillilitres) return refuse({ why: 'tooMuch', most: mostMillilitres })
  return ok({ value, unit, amount })
}

/** Millilitres, to the nearest microlitre. */
export const readMillilitres = (typed: string): Result<Microlitres, AmountRefusal> => {
  const size = readSize(typed, 'mL')
  return size.ok ? ok(size.value.amount) : size
}

/** Minor units. Beyond it a slip of the finger: no food costs so much in any currency. */
const mostMinor = 1_000_000_000
export type PriceRefusal =
  | NumberRefusal
  | { readonly why: 'priceOutOfRange' | 'currencyUnknown' }
  /** In the currency's own unit. */
  | { readonly why: 'priceTooLarge'; readonly most: number }

/** @param digits decimal places its currency has: 2 for pence, 0 for yen */
export const readPrice = (typed: string, currency: string, digits: number): Result<Price, PriceRefusal> => {
  const number = readNumber(typed)
  if (!number.ok) return number
  const minor = Math.round(number.value * 10 ** digits)
  if (minor < 1) return refuse({ why: 'priceOutOfRange' })
  if (minor > mostMinor) return refuse({ why: 'priceTooLarge', most: mostMinor / 10 ** digits })
  const code = currency.trim().toUpperCase()
  return /^[A-Z]{3}$/.test(code) ? ok({ minor, currency: code }) : refuse({ why: 'currencyUnknown' })
}
