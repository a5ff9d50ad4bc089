/** A backup or another phone's book comes in: looked through first, then all of it or none. */
import './restore.css'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Labelled } from '../../parts/Labelled.tsx'
import { Loading } from '../../parts/Loading.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Progress } from '../../parts/Progress.tsx'
import type { BackupPreview } from '../../state/backup.ts'
import { number } from '../../words/numbers.ts'
import { previewText, takenInText } from '../../words/phone.ts'
import { refusalText } from '../../words/refusals.ts'
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
        <Labelled
          label="A backup file to take in"
          hint="From this phone or another. You see what it would bring before anything is written."
          error={state.is === 'refused' ? refusalText(state.refusal, reading) : undefined}
        >
          {(wires) => (
            <input
              {...wires}
              className="file-input"
              type="file"
              accept=".txt,.jsonl,text/plain"
              onChange={({ target }) => {
                const file = target.files?.[0]
                // Emptied, so that the same file may be chosen again once it is mended.
                target.value = ''
                if (file) void choose(file)
              }}
            />
          )}
        </Labelled>
      )}
      {state.is === 'reading' && <Loading says={`Looking through ${state.name} …`} />}
      {state.is === 'preview' && (
        <Preview name={state.name} preview={state.preview} onTakeIn={takeIn} onLeave={leave} />
      )}
      {state.is === 'takingIn' && (
        <>
          <Progress
            label="Taking it in"
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
          <output>{takenInText(state.imported)}</output>
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
  return (
    <Notice title={name}>
      <p role="status">{previewText(preview, phones, reading)}</p>
      <Clashes clashes={preview.clashes} reading={reading} />
      <Actions>
        {news > 0 && (
          <Button onAct={() => onTakeIn(preview)}>
            {news === 1 ? 'Take in the new one' : `Take in the ${number(news)} new ones`}
          </Button>
        )}
        {news === 0 && preview.clashes.length > 0 && (
          <Button onAct={() => onTakeIn(preview)}>Take in what disagrees, to be asked about it</Button>
        )}
        <Button kind="quiet" onAct={onLeave}>
          {news > 0 || preview.clashes.length > 0 ? 'Leave it' : 'Good'}
        </Button>
      </Actions>
    </Notice>
  )
}
