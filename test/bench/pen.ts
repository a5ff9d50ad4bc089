/** Writes entries down as two phones would, each with its own growing stamps. */
import { type DeviceId, type Entry, type Fact, nextStamp, type Stamp } from '../../core/index.ts'
import { kitchenPhone, labPhone } from '../support/given.ts'
import type { Dice } from './dice.ts'

export type Pen = {
  readonly write: (fact: Fact) => Stamp
  readonly written: readonly Entry<Fact>[]
}

/** How often, in a hundred, the phone in the kitchen was nearer. */
const kitchenShare = 20

export const newPen = (dice: Dice): Pen => {
  const written: Entry<Fact>[] = []
  const latest = new Map<DeviceId, Stamp>()
  return {
    written,
    write: (fact) => {
      const phone = dice.percent(kitchenShare) ? kitchenPhone : labPhone
      const id = nextStamp(latest.get(phone), fact.at, phone)
      latest.set(phone, id)
      written.push({ id, fact })
      return id
    },
  }
}
