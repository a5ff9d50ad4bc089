/** Names that tell tanks apart. Two may share one, once she has said so. */
import type { TankId } from '../basis/ids.ts'
import type { Moment } from '../basis/zones.ts'
import { type TankState, tanksAt } from './state.ts'

const plain = (name: string): string => name.trim().toLowerCase()

const others = (state: TankState, tank: TankId, now: Moment): readonly string[] =>
  tanksAt(state, now).flatMap((other) => (other.tank === tank ? [] : [plain(other.name)]))

/** Another tank that is kept goes by this name. */
export const nameTaken = (state: TankState, tank: TankId, name: string, now: Moment): boolean =>
  others(state, tank, now).includes(plain(name))

/** "Tank", or "Tank 2" where there is one: the first number that no other has. */
export const freeName = (state: TankState, tank: TankId, base: string, now: Moment): string => {
  const taken = others(state, tank, now)
  if (taken.length === 0) return base
  let number = taken.length + 1
  while (taken.includes(plain(`${base} ${number}`))) number += 1
  return `${base} ${number}`
}
