/** What the backup file leaves out, and the way to have it in. */
import { makeBackupWithPhotos } from '../../state/photoBackup.ts'
import { bytesWords, fittingText, picturesHereText } from '../../words/photos.ts'
import type { Reading } from '../../words/reading.ts'
import { usePictures } from '../Photos/usePictures.ts'
import { SaveBackup } from './SaveBackup.tsx'

export const SaveWithPhotos = ({ reading }: { readonly reading: Reading }) => {
  const photos = usePictures()
  if (!photos) return null
  const { told, here, fit, bytes } = photos
  return (
    <>
      <p>
        {picturesHereText({ told, here: here.size })}
        {fit < here.size && ` ${fittingText(fit)}`}
      </p>
      {here.size > 0 && (
        <SaveBackup
          reading={reading}
          kind="quiet"
          label={`Save it with the photos, ${bytesWords(bytes)}`}
          make={makeBackupWithPhotos}
        />
      )}
    </>
  )
}
