/** A backup, or another phone's book, on its way in: looked through first, then taken in whole or not at all. */
import { type Held, type ImportRefusal, type LedgerFile, ok, type Result, refuse, union } from '../../core/index.ts'
import type { FileTooLarge, FileUnreadable, ZipBroken } from '../storage/backupRefusals.ts'
import type { StorageRefusal } from '../storage/connection.ts'
import type { Imported, ImportStopped, Progress } from '../storage/importing.ts'
import { now } from './clock.ts'
import { renewDevice, setMatter } from './device.ts'
import { loadPart } from './leave.ts'
import { type PicturesInFile, picturesInFile } from './photoBackup.ts'
import { takeIn, wholeBook } from './store.ts'
import { type Listed, listZip, looksZipped, mostZipped, unzip } from './zip.ts'

export type BackupPreview = {
  readonly file: LedgerFile
  /** What this phone would gain. */
  readonly added: readonly Held[]
  readonly already: number
  readonly clashes: readonly { readonly ours: Held; readonly theirs: Held }[]
  /** This phone holds nothing: it looks like a restore. */
  readonly restores: boolean
  readonly pictures: PicturesInFile
  /** Where those are. */
  readonly source: Blob
}

/** Twenty years of a busy household are a tenth of this. */
const mostBytes = 128 * 1024 * 1024

/** Reads and compares; nothing is written. */
export const previewBackup = async (
  file: File,
): Promise<Result<BackupPreview, ImportRefusal | FileTooLarge | FileUnreadable | ZipBroken | StorageRefusal>> => {
  const opened = await openFile(file)
  if (!opened.ok) return opened
  const { readLedgerFile } = await loadPart(() => import('../storage/codec.ts'))
  const read = readLedgerFile(opened.value.text)
  if (!read.ok) return read
  // Without it every entry would be new, and a full phone would look empty.
  const ours = await wholeBook()
  if (!ours.ok) return ours
  const { added, already, clashes } = union(ours.value, read.value.entries)
  const pictures = await picturesInFile(read.value.entries, [...ours.value, ...added], opened.value.listed)
  const restores = ours.value.length === 0
  return ok({ file: read.value, added, already, clashes, restores, pictures, source: file })
}

type Opened = { readonly text: string; readonly listed: readonly Listed[] }

const openFile = async (
  file: File,
): Promise<Result<Opened, ImportRefusal | FileTooLarge | FileUnreadable | ZipBroken>> => {
  try {
    if (await looksZipped(file)) return await openZip(file)
    if (file.size > mostBytes) return refuse({ why: 'fileTooLarge', bytes: file.size, most: mostBytes })
    return ok({ text: await file.text(), listed: [] })
  } catch {
    // The card was pulled, or the cloud drive is offline.
    return refuse({ why: 'fileUnreadable' })
  }
}

/** The book is the one text in it. */
const openZip = async (file: File): Promise<Result<Opened, ImportRefusal | FileTooLarge | ZipBroken>> => {
  if (file.size > mostZipped) return refuse({ why: 'fileTooLarge', bytes: file.size, most: mostZipped })
  const bytes = new Uint8Array(await file.arrayBuffer())
  const listed = listZip(bytes)
  if (!listed.ok) return listed
  const book = listed.value.find(({ name }) => /^[^/]+\.txt$/.test(name))
  if (!book) return refuse({ why: 'notALedger' })
  if (book.size > mostBytes) return refuse({ why: 'fileTooLarge', bytes: book.size, most: mostBytes })
  const text = unzip(bytes, [book.name]).get(book.name)
  return text ? ok({ text: new TextDecoder().decode(text), listed: listed.value }) : refuse({ why: 'zipBroken' })
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
