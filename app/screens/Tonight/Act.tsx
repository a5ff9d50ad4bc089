/** The large "Dosed" under the thumb, its undo in the same place, and what it was refused for. */
import type { Serving, TonightLine } from '../../../core/index.ts'
import { Button } from '../../parts/Actions.tsx'
import { BigAct, Dock } from '../../parts/BigAct.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { UndoBar } from '../../parts/UndoBar.tsx'
import { undoSeconds } from '../../state/useUndo.ts'
import { refusalText } from '../../words/refusals.ts'
import { actSub } from '../../words/tonight.ts'
import type { Dosing } from './useDosing.ts'

type ActProps = { readonly line: TonightLine; readonly serving: Serving | undefined; readonly dosing: Dosing }

const said: Record<NonNullable<Dosing['did']>, string> = {
  dosed: 'Noted: dosed.',
  skipped: 'Noted: skipped.',
  unknown: 'Noted: not known.',
  dropped: 'Noted: dropped. Tonight is still due.',
}

export const Act = ({ line, serving, dosing }: ActProps) => {
  const due = line.state.is === 'due'
  const { undo, did } = dosing
  const undoing = undo.until !== null
  if (!(due && serving) && !undoing && !dosing.refusal) return null
  return (
    <Dock>
      <Refused line={line} serving={serving} dosing={dosing} />
      <UndoBar
        until={undo.until}
        now={undo.now}
        seconds={undoSeconds}
        says={did ? said[did] : ''}
        undo="Undo"
        onUndo={dosing.takeBack}
      />
      {due && serving && (
        <BigAct
          label="Dosed"
          sub={actSub(serving, line)}
          state={dosing.busy ? 'busy' : 'ready'}
          onAct={() => dosing.dosed(line, serving)}
        />
      )}
      {line.state.is === 'done' && undoing && did === 'dosed' && <BigAct label="Dosed" state="done" onAct={() => {}} />}
    </Dock>
  )
}

/** Most refusals are questions: a second touch says it is so. */
const Refused = ({ line, serving, dosing }: ActProps) => {
  const { refusal } = dosing
  if (!refusal) return null
  const text = refusalText(refusal, { today: line.night, zone: line.tank.zone })
  if (refusal.why === 'justRecorded') return <Notice>{text}</Notice>
  const again = refusal.why === 'alreadyGiven'
  const sure = refusal.why === 'aboveRange' || refusal.why === 'moreThanBottleHolds' || refusal.why === 'pastItsDay'
  return (
    <Notice kind="refusal">
      <p>{text}</p>
      {(again || sure) && serving && (
        <Button kind="quiet" onAct={() => dosing.dosed(line, serving, again ? { again: true } : { sure: true })}>
          {again ? 'That was another one: note it too' : 'It is so: note it'}
        </Button>
      )}
      <Button kind="quiet" onAct={dosing.reset}>
        Leave it
      </Button>
    </Notice>
  )
}
