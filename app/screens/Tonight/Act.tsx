/** The large "Dosed" under the thumb, its undo in the same place, and what it was refused for. */
import { useState } from 'react'
import type { Serving, TonightLine } from '../../../core/index.ts'
import { Button } from '../../parts/Actions.tsx'
import { BigAct, Dock } from '../../parts/BigAct.tsx'
import { Field } from '../../parts/Field.tsx'
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
  const acting = due ? serving : undefined
  // The same button, so that whoever pressed it keeps the focus, and the undo is the next stop after it.
  const doneJustNow = line.state.is === 'done' && undoing && did === 'dosed'
  if (!acting && !undoing && !dosing.refusal) return null
  return (
    <Dock>
      <Refused line={line} dosing={dosing} />
      {(acting || doneJustNow) && (
        <BigAct
          label="Dosed"
          sub={acting ? actSub(acting, line) : undefined}
          state={doneJustNow ? 'done' : dosing.busy ? 'busy' : 'ready'}
          onAct={() => acting && dosing.dosed(line, acting)}
        />
      )}
      <UndoBar
        until={undo.until}
        now={undo.now}
        seconds={undoSeconds}
        says={did ? said[did] : ''}
        undo="Undo"
        onUndo={dosing.takeBack}
      />
    </Dock>
  )
}

/** Most refusals are questions: a second touch says it is so. */
const Refused = ({ line, dosing }: Omit<ActProps, 'serving'>) => {
  const { refusal, confirm } = dosing
  if (!refusal) return null
  const text = refusalText(refusal, { today: line.night, zone: line.tank.zone })
  if (refusal.why === 'justRecorded') return <Notice>{text}</Notice>
  const again = refusal.why === 'alreadyGiven'
  const sure = refusal.why === 'aboveRange' || refusal.why === 'moreThanBottleHolds' || refusal.why === 'pastItsDay'
  return (
    <Notice kind="refusal">
      <p>{text}</p>
      {confirm && (again || sure) && (
        <Button kind="quiet" onAct={() => confirm(line, again ? { again: true } : { sure: true })}>
          {again ? 'That was another one: note it too' : 'It is so: note it'}
        </Button>
      )}
      {confirm && refusal.why === 'farAboveRange' && <FarAbove onSure={(why) => confirm(line, { sure: true, why })} />}
      <Button kind="quiet" onAct={dosing.reset}>
        Leave it
      </Button>
    </Notice>
  )
}

/** What has happened can be noted, however much it was; so much of it with a word of why. */
const FarAbove = ({ onSure }: { readonly onSure: (why: string) => void }) => {
  const [why, setWhy] = useState('')
  const [missing, setMissing] = useState(false)
  const sure = () => (why.trim() === '' ? setMissing(true) : onSure(why.trim()))
  return (
    <>
      <Field
        label="How did it come about?"
        value={why}
        onChange={setWhy}
        error={missing && why.trim() === '' ? 'A word or two, please.' : undefined}
      />
      <Button kind="quiet" onAct={sure}>
        It is so: note it
      </Button>
    </>
  )
}
