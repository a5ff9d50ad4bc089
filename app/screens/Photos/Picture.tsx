/** One picture: by night in the red of the screen alone, unless she asks for its colours. */
import './photos.css'
import type { PhotoKept } from '../../../core/index.ts'
import { photoSays, unreadableText } from '../../words/photos.ts'
import type { Reading } from '../useReading.ts'
import { type Shown, usePicture } from './usePicture.ts'

type PictureProps = {
  readonly fact: PhotoKept
  readonly reading: Pick<Reading, 'zone' | 'today'>
  /** Cut to a square, so that several stand in rows. */
  readonly square?: boolean
  readonly inColours?: boolean
}

export const Picture = (props: PictureProps) => <PictureShown {...props} shown={usePicture(props.fact.photo)} />

/** For whoever has asked for it already. */
export const PictureShown = ({
  fact,
  reading,
  square = false,
  inColours = false,
  shown,
}: PictureProps & { readonly shown: Shown }) => (
  <span className="photo" data-square={square || undefined} data-colours={inColours || undefined}>
    {shown.is === 'here' && <img src={shown.url} alt={photoSays(fact, reading)} />}
    {(shown.is === 'notHere' || shown.is === 'unreadable') && (
      <span className="photo-none">
        {shown.is === 'notHere' ? 'Not on this phone' : unreadableText}
        <span className="for-ears">: {photoSays(fact, reading)}</span>
      </span>
    )}
  </span>
)
