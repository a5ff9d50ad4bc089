/** Three panes by torch, a minute each, with one big key for the thumb in the dark. */
import { lampNight, nightOf, type TankDescribed, torchCount } from '../../../core/index.ts'
import { Actions, Button, LinkButton } from '../../parts/Actions.tsx'
import { BigAct, Dock } from '../../parts/BigAct.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { now as clockNow } from '../../state/clock.ts'
import { useScreenLock } from '../../state/screenLock.ts'
import { useDraft } from '../../state/useDraft.ts'
import { darkWords, torchWords } from '../../words/life.ts'
import { inWords, number, plural } from '../../words/numbers.ts'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { AboutFields } from './AboutFields.tsx'
import { CountFields, SquareFields } from './CountFields.tsx'
import { type CountFields as Fields, newCount, readCount, sendCount } from './lifeFields.ts'
import type { OnKept } from './rooms.tsx'
import { useMinute } from './torch.ts'
import { type LifeForm, useLifeForm } from './useLifeForm.ts'

type TorchFields = Fields & {
  /** Which pane is next, from 0; 3: all are counted. */
  readonly pane: number
  /** When its minute was begun. */
  readonly minute: number | undefined
}
const newTorch: TorchFields = { ...newCount, pane: 0, minute: undefined }
const panes = 3

type TorchProps = { readonly tank: TankDescribed; readonly onKept: OnKept }

export const TorchCount = ({ tank, onKept }: TorchProps) => {
  const form = useLifeForm()
  const { fields, change: type, clear, restoredFrom } = useDraft<TorchFields>(`count/torch/${tank.tank}`, newTorch)
  const change = (changed: Partial<TorchFields>) => {
    form.reset()
    type(changed)
  }
  const send = async () => {
    const written = await form.send(sendCount(tank.tank, 'torch', fields))
    if (!written) return
    await clear()
    onKept('The count is kept.', written)
  }
  if (fields.pane < panes) return <Panes tank={tank} fields={fields} onChange={change} />
  return (
    <Review {...{ tank, fields, form, restoredFrom }} onChange={change} onFresh={() => void clear()} onSend={send} />
  )
}

type PanesProps = {
  readonly tank: TankDescribed
  readonly fields: TorchFields
  readonly onChange: (changed: Partial<TorchFields>) => void
}

const Panes = ({ tank, fields, onChange }: PanesProps) => {
  const { world, now } = useReading()
  useScreenLock()
  const { pane, minute } = fields
  const left = useMinute(minute)
  const counted = Number(fields.counts[pane] || '0')
  const count = (to: number) =>
    onChange({ counts: fields.counts.map((each, i) => (i === pane ? String(Math.max(0, to)) : each)) })
  const begin = () => {
    const at = clockNow()
    onChange({
      minute: at,
      began: pane === 0 ? at : fields.began,
      counts: fields.counts.map((each, i) => (i === pane ? '0' : each)),
    })
  }
  const next = () => onChange({ pane: pane + 1, minute: undefined })
  const which = `pane ${inWords(pane + 1)} of three`
  const { out, unsure } = lampNight(world, tank, nightOf(now, tank))
  if (left === undefined)
    return (
      <Page
        title="Count by torch"
        when={tank.name}
        answer={
          pane === 0
            ? 'Three panes, a minute each: count the specks in the light.'
            : `Now ${which}: the light on it first.`
        }
        dock={
          <Dock>
            <BigAct label="Begin the minute" sub={which} state="ready" onAct={begin} />
          </Dock>
        }
      >
        {pane === 0 && (
          <>
            <p>{darkWords(unsure ? undefined : Math.round((now - out) / 60_000))}</p>
            <p>
              A dim or red torch on a square of 10 by 10 cm. Hold it still for half a minute, then begin. Touch the key
              once for each animal; the phone ticks every ten seconds, where it can.
            </p>
            <LinkButton onAct={() => onChange({ pane: panes })}>I have counted already</LinkButton>
          </>
        )}
        {pane > 0 && <p>{`So far: ${fields.counts.slice(0, pane).map(Number).map(number).join(', ')}.`}</p>}
      </Page>
    )
  if (left > 0)
    return (
      <Page
        title="Count by torch"
        when={tank.name}
        answer={<span className="life-big">{number(counted)}</span>}
        dock={
          <Dock>
            <BigAct
              label="One more"
              sub={`${plural(left, 'second', 'seconds')} left, ${which}`}
              state="ready"
              onAct={() => count(counted + 1)}
            />
          </Dock>
        }
      >
        <Actions>
          <Button kind="quiet" onAct={() => count(counted - 1)}>
            One fewer
          </Button>
          <LinkButton onAct={() => onChange({ minute: undefined })}>Stop, and this pane again</LinkButton>
        </Actions>
      </Page>
    )
  return (
    <Page title="Count by torch" when={tank.name} answer={`The minute is over: ${number(counted)} in ${which}.`}>
      <p role="status" className="for-ears">
        The minute is over.
      </p>
      <Actions>
        <Button kind="quiet" onAct={() => count(counted - 1)}>
          One fewer
        </Button>
        <Button kind="quiet" onAct={() => count(counted + 1)}>
          One more
        </Button>
      </Actions>
      <Actions>
        <Button onAct={next}>{pane + 1 < panes ? 'To the next pane' : 'See all three'}</Button>
        <LinkButton onAct={() => onChange({ minute: undefined })}>This pane again</LinkButton>
      </Actions>
    </Page>
  )
}

type ReviewProps = PanesProps & {
  readonly form: LifeForm
  readonly restoredFrom: Parameters<typeof Unfinished>[0]['since']
  readonly onFresh: () => void
  readonly onSend: () => Promise<void>
}

const Review = ({ tank, fields, form, restoredFrom, onChange, onFresh, onSend }: ReviewProps) => {
  const reading = useReading()
  const read = readCount('torch', fields)
  const found = read.ok ? torchCount(read.value.counts) : undefined
  return (
    <Page
      title="Count by torch"
      when={tank.name}
      answer={found?.ok ? torchWords(found.value) : 'What was counted, pane by pane?'}
    >
      <Form onSend={onSend}>
        <Unfinished since={restoredFrom} zone={reading.zone} today={reading.today} onFresh={onFresh} />
        <CountFields
          fields={fields}
          onChange={onChange}
          form={form}
          label={(place) => `Pane ${place + 1}`}
          more="One more pane"
        />
        <AboutFields
          tank={tank}
          fields={fields}
          onChange={onChange}
          form={form}
          whereLabel="Which wall or corner?"
          whereHint="Counts of one spot are compared. Write it the same way each time."
        />
        <MoreExact
          label="Another square than 10 by 10 cm"
          open={form.wrong('width') !== undefined || form.wrong('height') !== undefined}
        >
          <SquareFields fields={fields} onChange={onChange} form={form} />
        </MoreExact>
        {form.wrong('') && <Notice kind="refusal">{form.wrong('')}</Notice>}
        <Actions>
          <Button submit waiting={form.busy}>
            Keep this count
          </Button>
          <LinkButton onAct={onFresh}>Begin again</LinkButton>
        </Actions>
      </Form>
    </Page>
  )
}
