/** Ids are made from randomness outside core and only compared here. */
import type { Branded } from './brand.ts'

export type DeviceId = Branded<string, 'DeviceId'>
export type TankId = Branded<string, 'TankId'>
export type FoodId = Branded<string, 'FoodId'>
export type PlaceId = Branded<string, 'PlaceId'>
export type BottleId = Branded<string, 'BottleId'>
export type LotId = Branded<string, 'LotId'>
export type PlanId = Branded<string, 'PlanId'>
/** The first 32 hexadecimal digits of the SHA-256 of its bytes. */
export type PhotoId = Branded<string, 'PhotoId'>
export type ParcelId = Branded<string, 'ParcelId'>
export type RunId = Branded<string, 'RunId'>
export type PurchaseId = Branded<string, 'PurchaseId'>

/** Ids and devices are short lower-case texts: they stand in file lines and in sortable stamps. */
export const idPattern = /^[0-9a-z]{4,32}$/
