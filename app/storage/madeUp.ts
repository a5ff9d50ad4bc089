/** The made-up household lies in databases of its own, which the worker never opens. Leaving it deletes them all. */
import { deleteDB } from 'idb'
import { deviceName } from './device.ts'
import { photosName } from './photosName.ts'
import { ledgerName } from './schema.ts'

/** Where a household's book, its pictures and this phone's own matters are kept. */
export type Databases = { readonly ledger: string; readonly device: string; readonly photos: string }

export const real: Databases = { ledger: ledgerName, device: deviceName, photos: photosName }
export const madeUp: Databases = {
  ledger: `${ledgerName}-madeup`,
  device: `${ledgerName}-madeup-device`,
  photos: `${ledgerName}-madeup-photos`,
}
/** What follows the address of a tab in it. It is there for the worker, which cannot see what else marks a tab. */
export const madeUpAddress = '?made-up'

/** True also where the browser cannot say. */
export const madeUpIsThere = async (): Promise<boolean> => {
  if (!('databases' in indexedDB)) return true
  const all = await indexedDB.databases()
  return all.some(({ name }) => Object.values<string | undefined>(madeUp).includes(name))
}

/** Done when all are gone. A connection still open somewhere is told to make way. */
export const deleteMadeUp = async (): Promise<void> => {
  await Promise.all(Object.values(madeUp).map((name) => deleteDB(name)))
}
