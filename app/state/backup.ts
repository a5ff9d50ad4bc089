/** The ledger as a file she can hold. */
import { ok, type PicturesBeside, type Result, refuse, wallDay } from '../../core/index.ts'
import { version } from '../../package.json'
import type { NotHandedOver } from '../storage/backupRefusals.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import { now } from './clock.ts'
import { setMatter, thisDevice } from './device.ts'
import { type HandedOver, handOver } from './handOver.ts'
import { loadPart } from './leave.ts'
import { phoneZone } from './phoneZone.ts'
import { currentWorld, wholeBook } from './store.ts'

export type BookWritten = { readonly name: string; readonly text: string }

/** The whole book as a text, and what to call it. @param inside how many of its pictures travel beside it */
export const writeBook = async (inside: () => number): Promise<Result<BookWritten, StorageRefusal>> => {
  const device = await thisDevice()
  if (!device.ok) return device
  const { exportLedger } = await loadPart(() => import('../storage/codec.ts'))
  const book = await wholeBook()
  if (!book.ok) return book
  const at = now()
  const told = new Set(currentWorld().photos.map(({ fact }) => fact.photo)).size
  const beside: PicturesBeside | undefined = told > 0 ? { told, inside: inside() } : undefined
  const text = exportLedger(book.value, { at, device: device.value, version }, beside)
  return ok({ name: `smallhours-${wallDay(at, phoneZone())}`, text })
}

/** Plain text by name and type: phones share texts, and refuse what they have not heard of. */
export const makeBackup = async (): Promise<Result<File, StorageRefusal>> => {
  const book = await writeBook(() => 0)
  return book.ok ? ok(new File([book.value.text], `${book.value.name}.txt`, { type: 'text/plain' })) : book
}

/** Only once it has left is the backup's date noted. */
export const handOverBackup = async (file: File): Promise<Result<HandedOver, NotHandedOver>> => {
  const handed = await handOver(file)
  if (!handed) return refuse({ why: 'notHandedOver' })
  await setMatter('lastBackup', now())
  return ok(handed)
}
