/** A backup or another phone's book comes in: looked through first, then all of it or none. */
import { Actions, Button } from '../../parts/Actions.tsx'
import { FileField } from '../../parts/FileField.tsx'
import { Loading } from '../../parts/Loading.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Progress } from '../../parts/Progress.tsx'
import type { BackupPreview } from '../../state/restoring.ts'
import { number } from '../../words/numbers.ts'
import { previewText, takenInText } from '../../words/phone.ts'
import { photosWords, picturesInFileText, picturesTakenText, restoreRefusal } from '../../words/photos.ts'
import { usePhones } from '../usePhones.ts'
import { useReading } from '../useReading.ts'
import { Clashes } from './Clashes.tsx'
import { useRestore } from './useRestore.ts'

export const Restore = () => {
  const reading = useReading()
  const { state, choose, takeIn, leave, stop } = useRestore()
  return (
    <>
      {state.is !== 'takingIn' && (
        <FileField
          label="A backup file to take in"
          hint="From this phone or another. You see what it would bring before anything is written."
          accept=".txt,.jsonl,.zip,text/plain,application/zip"
          error={state.is === 'refused' ? restoreRefusal(state.refusal, reading) : undefined}
          onFiles={([file]) => file && void choose(file)}
        />
      )}
      {state.is === 'reading' && <Loading says={`Looking through ${state.name} …`} />}
      {state.is === 'preview' && (
        <Preview name={state.name} preview={state.preview} onTakeIn={takeIn} onLeave={leave} />
      )}
      {state.is === 'takingIn' && (
        <>
          <Progress
            label={state.what === 'photos' ? 'Taking in the photos' : 'Taking it in'}
            done={state.progress.done}
            of={state.progress.of}
            says={`${number(state.progress.done)} of ${number(state.progress.of)}`}
          />
          <Actions>
            <Button kind="quiet" onAct={stop}>
              Stop
            </Button>
          </Actions>
        </>
      )}
      {state.is === 'done' && (
        <>
          <output>
            {takenInText(state.imported)}
            {state.pictures && ` ${picturesTakenText(state.pictures)}`}
          </output>
          {reading.world.oddities.length > 0 && (
            <p>
              Something in the book wants a look now. <a href="#/diary">Look at it</a>
            </p>
          )}
          <Clashes clashes={state.imported.clashes} reading={reading} />
        </>
      )}
    </>
  )
}

type PreviewProps = {
  readonly name: string
  readonly preview: BackupPreview
  readonly onTakeIn: (preview: BackupPreview) => void
  readonly onLeave: () => void
}

const Preview = ({ name, preview, onTakeIn, onLeave }: PreviewProps) => {
  const reading = useReading()
  const phones = usePhones(reading)
  const news = preview.added.length
  const { missing } = preview.pictures
  const photosToo = missing.length > 0 ? `, and ${photosWords(missing.length)}` : ''
  return (
    <Notice title={name}>
      <p role="status">
        {previewText(preview, phones, reading)}
        {picturesInFileText(preview.pictures) && ` ${picturesInFileText(preview.pictures)}`}
      </p>
      <Clashes clashes={preview.clashes} reading={reading} />
      <Actions>
        {news > 0 && (
          <Button onAct={() => onTakeIn(preview)}>
            {news === 1 ? 'Take in the new one' : `Take in the ${number(news)} new ones`}
            {photosToo}
          </Button>
        )}
        {news === 0 && preview.clashes.length > 0 && (
          <Button onAct={() => onTakeIn(preview)}>Take in what disagrees, to be asked about it</Button>
        )}
        {news === 0 && preview.clashes.length === 0 && missing.length > 0 && (
          <Button onAct={() => onTakeIn(preview)}>Take in {photosWords(missing.length)}</Button>
        )}
        <Button kind="quiet" onAct={onLeave}>
          {news > 0 || preview.clashes.length > 0 || missing.length > 0 ? 'Leave it' : 'Good'}
        </Button>
      </Actions>
    </Notice>
  )
}
