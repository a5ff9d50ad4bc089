/** The ledger as a file she can hold, out and in. */
import {
  type Held,
  type ImportRefusal,
  type LedgerFile,
  ok,
  type Result,
  refuse,
  union,
  wallDay,
} from '../../core/index.ts'
import { version } from '../../package.json'
import type { FileTooLarge, FileUnreadable, NotHandedOver } from '../storage/backupRefusals.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import type { Imported, ImportStopped, Progress } from '../storage/importing.ts'
import { now } from './clock.ts'
import { renewDevice, setMatter, thisDevice } from './device.ts'
import { type HandedOver, handOver } from './handOver.ts'
import { loadPart } from './leave.ts'
import { phoneZone } from './phoneZone.ts'
import { takeIn, wholeBook } from './store.ts'

const codec = () => loadPart(() => import('../storage/codec.ts'))

/** Plain text by name and type: phones share texts, and refuse what they have not heard of. */
export const makeBackup = async (): Promise<Result<File, StorageRefusal>> => {
  const device = await thisDevice()
  if (!device.ok) return device
  const { exportLedger } = await codec()
  const book = await wholeBook()
  if (!book.ok) return book
  const at = now()
  const text = exportLedger(book.value, { at, device: device.value, version })
  return ok(new File([text], `smallhours-${wallDay(at, phoneZone())}.txt`, { type: 'text/plain' }))
}

/** Only once it has left is the backup's date noted. */
export const handOverBackup = async (file: File): Promise<Result<HandedOver, NotHandedOver>> => {
  const handed = await handOver(file)
  if (!handed) return refuse({ why: 'notHandedOver' })
  await setMatter('lastBackup', now())
  return ok(handed)
}

export type BackupPreview = {
  readonly file: LedgerFile
  /** What this phone would gain. */
  readonly added: readonly Held[]
  readonly already: number
  readonly clashes: readonly { readonly ours: Held; readonly theirs: Held }[]
  /** This phone holds nothing: it looks like a restore. */
  readonly restores: boolean
}

/** Twenty years of a busy household are a tenth of this. */
const mostBytes = 128 * 1024 * 1024

/** Reads and compares; nothing is written. */
export const previewBackup = async (
  file: File,
): Promise<Result<BackupPreview, ImportRefusal | FileTooLarge | FileUnreadable | StorageRefusal>> => {
  if (file.size > mostBytes) return refuse({ why: 'fileTooLarge', bytes: file.size, most: mostBytes })
  let text: string
  try {
    text = await file.text()
  } catch {
    // The card was pulled, or the cloud drive is offline.
    return refuse({ why: 'fileUnreadable' })
  }
  const { readLedgerFile } = await codec()
  const read = readLedgerFile(text)
  if (!read.ok) return read
  // Without it every entry would be new, and a full phone would look empty.
  const ours = await wholeBook()
  if (!ours.ok) return ours
  const { added, already, clashes } = union(ours.value, read.value.entries)
  return ok({ file: read.value, added, already, clashes, restores: ours.value.length === 0 })
}

/** The book of an empty phone came from a file: that file is its backup, and who wrote it may be this very phone. */
export const afterRestore = async ({ file: { header } }: BackupPreview): Promise<Result<void, StorageRefusal>> => {
  const renewed = await renewDevice()
  if (!renewed.ok) return renewed
  await setMatter('restoredFrom', header.device)
  if (header.at <= now()) await setMatter('lastBackup', header.at)
  return renewed
}

/** All or none, compared once more with what is here by then. */
export const importBackup = (
  preview: BackupPreview,
  tell?: (progress: Progress) => void,
  signal?: AbortSignal,
): Promise<Result<Imported, StorageRefusal | ImportStopped>> => takeIn(preview.file.entries, tell, signal)
