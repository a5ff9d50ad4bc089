/** How far a tank's lamp is off, and what she did about it, or saw. */
import { useState } from 'react'
import {
  type Entry,
  type Fact,
  isClockTime,
  type LampRefusal,
  lampAsk,
  type Moment,
  notePowerCut,
  type PowerCutRefusal,
  type StrikeRefusal,
  seeLamp,
  strikeOut,
  type TankDescribed,
  type TankId,
  tanksAt,
} from '../../../core/index.ts'
import { Actions, Button, LinkButton } from '../../parts/Actions.tsx'
import { ClockField } from '../../parts/ClockField.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Picks } from '../../parts/Picks.tsx'
import type { Ask } from '../../state/store.ts'
import { useRequest } from '../../state/useRequest.ts'
import { cutWords, lampSeenWords, lampTexts, rightAgain } from '../../words/lamp.ts'
import { refusalText } from '../../words/refusals.ts'
import type { Reading } from '../useReading.ts'

type Refusal = LampRefusal | PowerCutRefusal | StrikeRefusal
type LampProps = { readonly tank: TankDescribed; readonly reading: Reading }
type Done = { readonly says: string; readonly written: readonly Entry<Fact>[] }

/** Nothing, where the lamp follows the clocks and does what it should. */
export const Lamp = ({ tank, reading }: LampProps) => {
  const { world, now } = reading
  const [done, setDone] = useState<Done>()
  const { busy, refusal, send } = useRequest<Refusal>()
  const ask = lampAsk(world, tank, now)
  const record = async (asked: Ask<Refusal>, says: string): Promise<boolean> => {
    const written = await send(asked)
    setDone(written && { says, written })
    return written !== undefined
  }
  const takeBack = async () => {
    const [entry] = done?.written ?? []
    if (entry && (await send((latest, at) => strikeOut(latest, { target: entry.id, why: 'mistake' }, at.now))))
      setDone(undefined)
  }
  const see = (goesOut: string) =>
    record((latest, at) => seeLamp(latest, { tank: tank.tank, goesOut }, at.now), lampSeenWords(goesOut))
  return (
    <>
      {ask && (
        <Notice>
          {lampTexts(ask).map((text) => (
            <p key={text}>{text}</p>
          ))}
          {(ask.tonight.late !== 0 || ask.tonight.unsure) && (
            <Actions>
              <Button kind="quiet" waiting={busy} onAct={() => void see(tank.lightsOut)}>
                {rightAgain(tank.lightsOut)}
                <span className="for-ears">: {tank.name}</span>
              </Button>
            </Actions>
          )}
        </Notice>
      )}
      <output className="said">{done?.says}</output>
      {done && <LinkButton onAct={() => void takeBack()}>Undo</LinkButton>}
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
      {tank.lamp && (
        <MoreExact label="The lamp’s clock" of={tank.name}>
          <SeenForm tank={tank} reading={reading} onSeen={see} />
          <CutForm tank={tank} reading={reading} onCut={record} />
        </MoreExact>
      )}
    </>
  )
}

type SeenFormProps = LampProps & { readonly onSeen: (goesOut: string) => Promise<boolean> }

const SeenForm = ({ tank, reading, onSeen }: SeenFormProps) => {
  const [goesOut, setGoesOut] = useState<string>(tank.lightsOut)
  const [wrong, setWrong] = useState(false)
  return (
    <Form
      onSend={async () => {
        setWrong(!isClockTime(goesOut))
        if (isClockTime(goesOut)) await onSeen(goesOut)
      }}
    >
      <ClockField
        label="It goes out, by the wall, at"
        hint="As you see it, or as you have just set it."
        value={goesOut}
        error={wrong ? refusalText({ why: 'lightsOutMissing' }, reading) : undefined}
        onChange={(time) => {
          setWrong(false)
          setGoesOut(time)
        }}
      />
      <Actions>
        <Button submit kind="quiet">
          That is when
        </Button>
      </Actions>
    </Form>
  )
}

type CutFormProps = LampProps & { readonly onCut: (ask: Ask<Refusal>, says: string) => Promise<boolean> }

const CutForm = ({ tank, reading, onCut }: CutFormProps) => {
  const kept = tanksAt(reading.world, reading.now)
  const [minutes, setMinutes] = useState('')
  const [without, setWithout] = useState<readonly TankId[]>(kept.map((one) => one.tank))
  const [wrong, setWrong] = useState<PowerCutRefusal>()
  const save = async () => {
    const asked = (now: Moment) => ({
      minutes,
      tanks: kept.flatMap((one) => (without.includes(one.tank) ? [one.tank] : [])),
      backAt: now,
    })
    const read = notePowerCut(reading.world, asked(reading.now), reading.now)
    setWrong(read.ok ? undefined : read.refusal)
    if (!read.ok) return
    const [cut] = read.value
    if (await onCut((latest, { now }) => notePowerCut(latest, asked(now), now), cutWords(cut.minutes))) setMinutes('')
  }
  return (
    <Form onSend={save}>
      <NumberField
        label="The power was away for"
        unit="minutes"
        hint="Noted once it is back. A dial is late by as much."
        value={minutes}
        error={wrong && wrong.why !== 'tankUnknown' ? refusalText(wrong, reading) : undefined}
        onChange={(typed) => {
          setWrong(undefined)
          setMinutes(typed)
        }}
      />
      {kept.length > 1 && (
        <Picks
          label="Whose lamps stood without it?"
          options={kept.map((one) => ({ value: one.tank, label: one.name }))}
          values={without}
          onChange={setWithout}
          error={wrong?.why === 'tankUnknown' ? refusalText(wrong, reading) : undefined}
        />
      )}
      <Actions>
        <Button submit kind="quiet">
          Note it<span className="for-ears">: no power, {tank.name}</span>
        </Button>
      </Actions>
    </Form>
  )
}
