/** The whole book as one file, by the phone's own sharing or as a download. */
import { useState } from 'react'
import type { Result } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { handOverBackup, makeBackup } from '../../state/backup.ts'
import type { HandedOver } from '../../state/handOver.ts'
import type { NotHandedOver } from '../../storage/backupRefusals.ts'
import type { StorageRefusal } from '../../storage/connection.ts'
import { handedOverText } from '../../words/phone.ts'
import type { Reading } from '../../words/reading.ts'
import { refusalText } from '../../words/refusals.ts'

type Saved =
  | { readonly is: 'idle' | 'making' }
  | { readonly is: 'done'; readonly handed: HandedOver }
  | { readonly is: 'refused'; readonly refusal: StorageRefusal | NotHandedOver }

type SaveBackupProps = {
  readonly reading: Reading
  readonly label?: string
  readonly kind?: 'primary' | 'quiet'
  readonly make?: () => Promise<Result<File, StorageRefusal>>
}

export const SaveBackup = ({
  reading,
  label = 'Save a backup file',
  kind = 'primary',
  make = makeBackup,
}: SaveBackupProps) => {
  const [saved, setSaved] = useState<Saved>({ is: 'idle' })
  const save = async () => {
    setSaved({ is: 'making' })
    const made = await make()
    if (!made.ok) return setSaved({ is: 'refused', refusal: made.refusal })
    const handed = await handOverBackup(made.value)
    setSaved(handed.ok ? { is: 'done', handed: handed.value } : { is: 'refused', refusal: handed.refusal })
  }
  return (
    <>
      <Actions>
        <Button kind={kind} onAct={save} waiting={saved.is === 'making'}>
          {label}
        </Button>
        <output>{saved.is === 'done' && handedOverText(saved.handed)}</output>
      </Actions>
      {saved.is === 'refused' && <Notice kind="refusal">{refusalText(saved.refusal, reading)}</Notice>}
    </>
  )
}
