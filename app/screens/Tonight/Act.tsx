/** The large "Dosed" under the thumb, its undo in the same place, and what it was refused for. */
import { type ReactNode, Suspense, useEffect, useRef } from 'react'
import type { DoseRefusal, Serving, TonightLine } from '../../../core/index.ts'
import { Button } from '../../parts/Actions.tsx'
import { BigAct, Dock } from '../../parts/BigAct.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { UndoBar } from '../../parts/UndoBar.tsx'
import { undoSeconds } from '../../state/useUndo.ts'
import { refusalText } from '../../words/refusals.ts'
import { actSub, type Reader, saysWords } from '../../words/tonight.ts'
import { Refused } from './rare.ts'
import type { Dosing } from './useDosing.ts'

type ActProps = {
  readonly line: TonightLine
  readonly serving: Serving | undefined
  /** The one that is due after this one. */
  readonly next: TonightLine | undefined
  readonly reader: Reader
  readonly dosing: Dosing
}

export const Act = ({ line, serving, next, reader, dosing }: ActProps) => {
  const due = line.state.is === 'due'
  const { undo, did } = dosing
  const undoing = undo.until !== null
  const acting = due ? serving : undefined
  // The same button, so that whoever pressed it keeps the focus, and the undo is the next stop after it.
  const doneJustNow = line.state.is === 'done' && undoing && did === 'dosed'
  if (!acting && !undoing && !dosing.refusal) return null
  // While something is asked about a dose, its answer is the act.
  const offered = (acting && !isAskedAbout(dosing)) || doneJustNow
  return (
    <Dock>
      <Trouble line={line} reader={reader} dosing={dosing} />
      {offered && (
        <BigAct
          label="Dosed"
          sub={acting ? actSub(acting, line) : undefined}
          state={doneJustNow ? 'done' : dosing.busy ? 'busy' : 'ready'}
          onAct={() => acting && void dosing.dosed(line, acting)}
        />
      )}
      <UndoBar
        until={undo.until}
        now={undo.now}
        seconds={undoSeconds}
        says={did ? saysWords(did, dosing.written, reader.world) : ''}
        undo="Undo"
        onUndo={() => void dosing.takeBack()}
      />
      {undoing && !due && next && (
        <Button kind="quiet" onAct={() => dosing.bring(next.plan.plan)}>
          Next: {next.tank.tank === line.tank.tank ? next.food.name : next.tank.name}
        </Button>
      )}
    </Dock>
  )
}

const doseWhys: Record<DoseRefusal['why'], true> = {
  noSuchPlan: true,
  nothingGiven: true,
  wholePortions: true,
  notYet: true,
  justRecorded: true,
  alreadyGiven: true,
  aboveRange: true,
  farAboveRange: true,
  moreThanBottleHolds: true,
  pastItsDay: true,
  fromAside: true,
}
const isAsked = (refusal: NonNullable<Dosing['refusal']>): refusal is DoseRefusal => refusal.why in doseWhys

/** A refusal that waits for her word. */
const isAskedAbout = ({ refusal, confirm }: Dosing): boolean =>
  !!refusal && !!confirm && isAsked(refusal) && refusal.why !== 'justRecorded'

type TroubleProps = Pick<ActProps, 'line' | 'reader' | 'dosing'>

const Trouble = ({ line, reader, dosing }: TroubleProps) => {
  const { refusal, confirm, dose } = dosing
  if (!refusal) return null
  const reading = { today: line.night, zone: line.tank.zone }
  const text = refusalText(refusal, reading)
  if (refusal.why === 'justRecorded') return <Notice>{text}</Notice>
  if (!confirm || !isAsked(refusal))
    return (
      <Notice kind="refusal">
        <p>{text}</p>
        <Button kind="quiet" onAct={dosing.reset}>
          Leave it
        </Button>
      </Notice>
    )
  return (
    <Asked>
      <Refused
        refusal={refusal}
        food={line.food.food}
        reader={reader}
        reading={reading}
        ways={{
          onSure: (more) => void confirm(line, more),
          onBottle: (bottle) => {
            if (!dose) return
            const taken = dose.taken.map((part) => (part.from === 'bottle' ? { ...part, bottle } : part))
            void confirm(line, {}, { ...dose, taken })
          },
          onHeldMore: () => void confirm(line, { heldMore: true }),
          onLeave: dosing.reset,
        }}
      />
    </Asked>
  )
}

/** The question takes the place of the act: whoever pressed that is led to it, rather than to the top of the page. */
const Asked = ({ children }: { readonly children: ReactNode }) => {
  const place = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (document.activeElement === document.body) place.current?.focus({ preventScroll: true })
  }, [])
  return (
    <div ref={place} tabIndex={-1}>
      <Suspense>{children}</Suspense>
    </div>
  )
}
