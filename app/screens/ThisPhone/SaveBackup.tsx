/** The whole book as one file, with its photos or without, by the phone's own sharing or as a download. */
import { useState } from 'react'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { handOverBackup, makeBackup } from '../../state/backup.ts'
import type { HandedOver } from '../../state/handOver.ts'
import type { NotHandedOver } from '../../storage/backupRefusals.ts'
import type { StorageRefusal } from '../../storage/connection.ts'
import { handedOverText } from '../../words/phone.ts'
import { bytesWords, picturesHereText } from '../../words/photos.ts'
import type { Reading } from '../../words/reading.ts'
import { refusalText } from '../../words/refusals.ts'
import { usePictures } from '../Photos/usePictures.ts'

type Saved =
  | { readonly is: 'idle' | 'making' }
  | { readonly is: 'done'; readonly handed: HandedOver }
  | { readonly is: 'refused'; readonly refusal: StorageRefusal | NotHandedOver }

export const SaveBackup = ({ reading }: { readonly reading: Reading }) => {
  const [saved, setSaved] = useState<Saved>({ is: 'idle' })
  const photos = usePictures()
  const save = async (withPhotos: boolean) => {
    setSaved({ is: 'making' })
    const made = await makeBackup(withPhotos)
    if (!made.ok) return setSaved({ is: 'refused', refusal: made.refusal })
    const handed = await handOverBackup(made.value)
    setSaved(handed.ok ? { is: 'done', handed: handed.value } : { is: 'refused', refusal: handed.refusal })
  }
  return (
    <>
      {photos && photos.told > 0 && <p>{picturesHereText({ told: photos.told, here: photos.here.size })}</p>}
      <Actions>
        <Button onAct={() => save(false)} waiting={saved.is === 'making'}>
          Save a backup file
        </Button>
        {photos && photos.here.size > 0 && (
          <Button kind="quiet" onAct={() => save(true)} waiting={saved.is === 'making'}>
            Save it with the photos, {bytesWords(photos.bytes)}
          </Button>
        )}
        <output>{saved.is === 'done' && handedOverText(saved.handed)}</output>
      </Actions>
      {saved.is === 'refused' && <Notice kind="refusal">{refusalText(saved.refusal, reading)}</Notice>}
    </>
  )
}
