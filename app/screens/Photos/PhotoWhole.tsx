/** One photo over the whole screen, with what is known of it, and what may be done about it. */
import { useEffect, useId, useLayoutEffect, useRef, useState } from 'react'
import type { PhotoNoted } from '../../../core/index.ts'
import { Actions, Button, LinkButton } from '../../parts/Actions.tsx'
import { bytesWords, notHereText, takenOn } from '../../words/photos.ts'
import { CrossOut } from '../Diary/CrossOut.tsx'
import type { Reading } from '../useReading.ts'
import { PictureShown } from './Picture.tsx'
import { SayOfPhoto } from './SayOfPhoto.tsx'
import { usePicture } from './usePicture.ts'

type PhotoWholeProps = { readonly photo: PhotoNoted; readonly reading: Reading; readonly onClose: () => void }

export const PhotoWhole = ({ photo, reading, onClose }: PhotoWholeProps) => {
  const { entry, fact } = photo
  const dialog = useRef<HTMLDialogElement>(null)
  const title = useId()
  const [asked, setAsked] = useState<'say' | 'crossOut'>()
  const [inColours, setInColours] = useState(false)
  const panel = useRef<HTMLDivElement>(null)
  const shown = usePicture(fact.photo)
  const here = shown.is !== 'notHere'
  // Closed before it goes: only then does the browser give the focus back to what opened it.
  useLayoutEffect(() => {
    const opened = dialog.current
    opened?.showModal()
    return () => opened?.close()
  }, [])
  // The button that asked is gone.
  useEffect(() => {
    if (asked === 'say') panel.current?.focus()
  }, [asked])
  return (
    <dialog className="photo-whole" ref={dialog} aria-labelledby={title} onClose={onClose}>
      <h2 className="section-title" id={title}>
        {takenOn(fact.at, reading)}
      </h2>
      {here ? <PictureShown fact={fact} reading={reading} inColours={inColours} shown={shown} /> : <p>{notHereText}</p>}
      {fact.words && <p>{fact.words}</p>}
      <p className="photo-size">{bytesWords(fact.bytes)}</p>
      {asked === 'say' && (
        <div ref={panel} tabIndex={-1}>
          <SayOfPhoto photo={photo} reading={reading} onDone={onClose} />
        </div>
      )}
      {asked === 'crossOut' && (
        <CrossOut entry={{ id: entry, fact }} reading={reading} onClose={() => setAsked(undefined)} />
      )}
      <Actions>
        <Button kind="quiet" onAct={() => dialog.current?.close()}>
          Close
        </Button>
        {asked === undefined && (
          <>
            {here && (
              <span className="photo-colours">
                <Button kind="quiet" onAct={() => setInColours(!inColours)}>
                  {inColours ? 'In red again' : 'In its colours; it shines'}
                </Button>
              </span>
            )}
            <LinkButton onAct={() => setAsked('say')}>What it shows, and when</LinkButton>
            <LinkButton onAct={() => setAsked('crossOut')}>Cross out</LinkButton>
          </>
        )}
      </Actions>
    </dialog>
  )
}
