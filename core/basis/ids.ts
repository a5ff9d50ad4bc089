/** Ids are made from randomness outside core and only compared here. */
import type { Branded } from './brand.ts'

export type DeviceId = Branded<string, 'DeviceId'>
export type TankId = Branded<string, 'TankId'>
export type FoodId = Branded<string, 'FoodId'>
export type PlaceId = Branded<string, 'PlaceId'>
export type BottleId = Branded<string, 'BottleId'>
export type LotId = Branded<string, 'LotId'>
export type PlanId = Branded<string, 'PlanId'>
export type PurchaseId = Branded<string, 'PurchaseId'>

/** Ids and devices are short lower-case texts: they stand in file lines and in sortable stamps. */
export const idPattern = /^[0-9a-z]{4,32}$/
