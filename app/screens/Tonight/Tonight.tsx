/** What is due tonight, one touch to say it is done, and the bottles to shake. */
import { Suspense, useMemo } from 'react'
import { useLocation } from 'wouter'
import { lasts, type TankId, together } from '../../../core/index.ts'
import { Later } from '../../parts/Later.tsx'
import { Loading } from '../../parts/Loading.tsx'
import { Page } from '../../parts/Page.tsx'
import { useMatter } from '../../state/device.ts'
import { dayWords, nightWords } from '../../words/dates.ts'
import { lightsWords, sinceWords, togetherWords, tonightAnswer, unlikePlanWords } from '../../words/tonight.ts'
import { PleaseCheck } from '../PleaseCheck.tsx'
import { tonightShown } from '../tonightShown.ts'
import { useReading } from '../useReading.ts'
import { Abroad } from './Abroad.tsx'
import { Act } from './Act.tsx'
import { FridgeSoon } from './FridgeSoon.tsx'
import { NothingLeft } from './NothingLeft.tsx'
import { NothingPlanned } from './NothingPlanned.tsx'
import { OpenTray } from './OpenTray.tsx'
import { OrderSoon } from './OrderSoon.tsx'
import { OtherLines } from './OtherLines.tsx'
import { Holding, Lamps, Overfed, Unlogged } from './rare.ts'
import { Shaking } from './Shaking.tsx'
import { SomethingElse } from './SomethingElse.tsx'
import { useDosing } from './useDosing.ts'

/** Where a touched nudge leads. */
const tankPath = (tank: TankId): string => `/tank/${tank}`

export const Tonight = () => {
  const reading = useReading()
  const { world, now } = reading
  const reader = { world, now, thisPhone: useMatter('device') }
  const dosing = useDosing()
  // While the undo runs this is drawn four times a second; the stock need not be walked again for that.
  const lines = tonightShown(world, now)
  const [path] = useLocation()
  const line =
    lines.find(({ plan }) => plan.plan === dosing.front) ??
    lines.find(({ tank, state }) => state.is === 'due' && path === tankPath(tank.tank)) ??
    lines[0]
  const food = line?.food.food
  const lasting = useMemo(() => food && lasts(world, food, now), [world, food, now])
  if (!line) return <NothingPlanned />

  const serving = dosing.chosen(line)
  const { state } = line
  const due = state.is === 'due'
  // In the dark, with a wet thumb, there is one thing to touch; the rest can wait until it is done.
  const asleep = due && line.dark
  // A dose from the bottle wants it shaken first; other bottles can wait for the light.
  const shakeNow = !asleep || serving?.taken.from === 'bottle'
  const others = lines.filter((other) => other !== line)
  const open = lines.filter(({ unlogged }) => unlogged.length > 0)
  const much = state.is === 'done' || state.is === 'resting' ? state.overfed : undefined
  const held = state.is === 'held' ? state.until : due ? state.heldUntil : undefined
  const tanks = [...new Set(lines.map(({ tank }) => tank))]
  const parts = { line, reading, dosing }
  return (
    <Page
      title="Tonight"
      when={`${nightWords(line.night)}, ${dayWords(line.night, line.night)}`}
      answer={tonightAnswer({ ...line, servings: serving ? [serving] : [] }, reader, lasting)}
      dock={
        <Act
          line={line}
          serving={serving}
          next={others.find((other) => other.state.is === 'due')}
          reader={reader}
          dosing={dosing}
        />
      }
    >
      <Later>
        <Suspense fallback={<Loading says="One moment …" />}>
          {open.length > 0 && <Unlogged lines={open} reading={reading} dosing={dosing} />}
          {much && much.chosen === undefined && <Overfed line={line} much={much} dosing={dosing} />}
          {held && <Holding key={held} line={line} until={held} dosing={dosing} />}
        </Suspense>
        {due && serving && state.since && <p>{sinceWords(state.since, line.night, line.unlogged.length > 0)}</p>}
        {due && serving && <Unlike text={unlikePlanWords(serving, line.plan.amount)} />}
        {together(lines).map((both) => (
          <p key={both.tank.tank}>{togetherWords(both)}</p>
        ))}
        {due && serving && <OpenTray serving={serving} world={world} />}
        {due && !serving && <NothingLeft {...parts} />}
        {due && <p>{lightsWords(line)}</p>}
        <Abroad line={line} />
        {tanks.some(({ lamp }) => lamp) && (
          <Suspense fallback={<Loading says="One moment …" />}>
            <Lamps tanks={tanks} reading={reading} />
          </Suspense>
        )}
        {!asleep && <PleaseCheck />}
        <OtherLines lines={others} reader={reader} dosing={dosing} />
        {shakeNow && <Shaking />}
        {!asleep && <FridgeSoon />}
        {!asleep && <OrderSoon reading={reading} />}
        <SomethingElse key={line.plan.plan} {...parts} serving={serving} />
      </Later>
    </Page>
  )
}

const Unlike = ({ text }: { readonly text: string | undefined }) => (text ? <p>{text}</p> : null)
