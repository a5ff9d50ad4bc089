/** A file on its way in: chosen, looked through, taken in or left. */
import { useRef, useState } from 'react'
import type { ImportRefusal } from '../../../core/index.ts'
import { type PicturesTaken, takePicturesIn } from '../../state/photoBackup.ts'
import { afterRestore, type BackupPreview, importBackup, previewBackup } from '../../state/restoring.ts'
import type { FileTooLarge, FileUnreadable, ZipBroken } from '../../storage/backupRefusals.ts'
import type { StorageRefusal } from '../../storage/connection.ts'
import type { Imported, ImportStopped, Progress } from '../../storage/importing.ts'

export type RestoreRefusal = ImportRefusal | FileTooLarge | FileUnreadable | ZipBroken | StorageRefusal | ImportStopped
export type Restoring =
  | { readonly is: 'idle' }
  | { readonly is: 'reading'; readonly name: string }
  | { readonly is: 'preview'; readonly name: string; readonly preview: BackupPreview }
  | { readonly is: 'takingIn'; readonly what: 'entries' | 'photos'; readonly progress: Progress }
  | { readonly is: 'done'; readonly imported: Imported; readonly pictures: PicturesTaken | undefined }
  | { readonly is: 'refused'; readonly refusal: RestoreRefusal }

export const useRestore = () => {
  const [state, setState] = useState<Restoring>({ is: 'idle' })
  const stopping = useRef<AbortController>(null)
  // Two files chosen in a hurry: the answer of the first must not cover that of the second.
  const turn = useRef(0)

  const choose = async (file: File) => {
    const mine = ++turn.current
    setState({ is: 'reading', name: file.name })
    const read = await previewBackup(file)
    if (mine !== turn.current) return
    setState(
      read.ok ? { is: 'preview', name: file.name, preview: read.value } : { is: 'refused', refusal: read.refusal },
    )
  }
  const takeIn = async (preview: BackupPreview) => {
    const stop = new AbortController()
    stopping.current = stop
    const show = (what: 'entries' | 'photos') => (progress: Progress) => setState({ is: 'takingIn', what, progress })
    const entries = show('entries')
    entries({ done: 0, of: preview.added.length })
    const done = await importBackup(preview, entries, stop.signal)
    if (!done.ok) return setState({ is: 'refused', refusal: done.refusal })
    if (done.value.wasEmpty) {
      const renewed = await afterRestore(preview)
      if (!renewed.ok) return setState({ is: 'refused', refusal: renewed.refusal })
    }
    const { missing } = preview.pictures
    const pictures =
      missing.length > 0 ? await takePicturesIn(preview.source, missing, show('photos'), stop.signal) : undefined
    setState({ is: 'done', imported: done.value, pictures })
  }
  const leave = () => {
    turn.current += 1
    setState({ is: 'idle' })
  }
  return { state, choose, takeIn, leave, stop: () => stopping.current?.abort() }
}
