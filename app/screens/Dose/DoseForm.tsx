/** The questions, one under the other; what is refused is asked beside the button, and nothing typed is lost. */
import { useState } from 'react'
import type { BottleId, DoseRefusal, Entry, Fact, Microlitres, PlanMade, TankDescribed } from '../../../core/index.ts'
import { Actions, Button, ButtonLink } from '../../parts/Actions.tsx'
import { Form } from '../../parts/Form.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { useMatter } from '../../state/device.ts'
import { useDraft } from '../../state/useDraft.ts'
import { fromStorage, useRequest } from '../../state/useRequest.ts'
import { doseWrongText } from '../../words/dose.ts'
import { typedMillilitres } from '../../words/numbers.ts'
import { refusalText } from '../../words/refusals.ts'
import { Refused } from '../Tonight/seldom/Refused.tsx'
import type { Confirmed } from '../Tonight/useDosing.ts'
import { Unfinished } from '../Unfinished.tsx'
import type { Reading } from '../useReading.ts'
import { Why } from '../Why.tsx'
import { DoseAmounts, DoseTanks } from './DoseReached.tsx'
import { DoseSource } from './DoseSource.tsx'
import { DoseWhen } from './DoseWhen.tsx'
import type { DoseField, DoseFields, DoseWrong } from './doseFields.ts'
import { giveRead, readDose, usualDose } from './readDose.ts'

type DoseFormProps = {
  readonly plan: PlanMade
  /** The plan's own. */
  readonly tank: TankDescribed
  readonly tanks: readonly TankDescribed[]
  readonly reading: Reading
  readonly onNoted: (written: readonly Entry<Fact>[]) => void
}

export const DoseForm = ({ plan, tank, tanks, reading, onNoted }: DoseFormProps) => {
  const { world, now } = reading
  const thisPhone = useMatter('device')
  const { fields, change: type, clear, restoredFrom } = useDraft(`dose/${plan.plan}`, usualDose(plan, tank, world, now))
  const { busy, refusal, send, reset } = useRequest<DoseRefusal>()
  const [wrong, setWrong] = useState<DoseWrong>()
  /** What she has confirmed of the form as it stands. */
  const [told, setTold] = useState<Confirmed>({})
  const asking = refusal && !fromStorage(refusal) ? refusal : undefined
  const words = { today: reading.today, zone: tank.zone }

  const change = (changed: Partial<DoseFields>) => {
    type(changed)
    setWrong(undefined)
    setTold({})
    reset()
  }
  const save = async (as: DoseFields, confirmed: Confirmed) => {
    setTold(confirmed)
    const read = readDose(as, plan, world, now)
    setWrong(read.ok ? undefined : read.refusal)
    if (!read.ok) return
    const written = await send((latest, at) => {
      // "Just now" is the moment of the touch, not of the minute shown.
      const dose = as.when === 'now' ? { ...read.value, at: at.now } : read.value
      return giveRead(latest, dose, confirmed, at.now)
    })
    if (!written) return
    setTold({})
    await clear()
    onNoted(written)
  }
  const instead = (changed: Partial<DoseFields>, confirmed: Confirmed = {}) => {
    type(changed)
    void save({ ...fields, ...changed }, confirmed)
  }
  const meant = (amount: Microlitres) => {
    const typed = typedMillilitres(amount)
    const [only] = fields.tanks
    const of = refusal && refusal.why === 'farAboveRange' ? refusal.tank : only
    instead(
      fields.tanks.length === 1 && only !== undefined && fields.amounts[only] === undefined
        ? { poured: typed }
        : { amounts: of ? { ...fields.amounts, [of]: typed } : fields.amounts },
    )
  }
  const inField = (field: DoseField) => (wrong?.field === field ? doseWrongText(wrong.refusal, words) : undefined)
  const parts = { fields, change, plan, reading, wrong: inField }
  return (
    <Form onSend={() => save(fields, told)}>
      <Unfinished {...reading} since={restoredFrom} onFresh={() => void clear()} />
      <DoseTanks {...parts} tanks={tanks} />
      <DoseSource {...parts} />
      <DoseAmounts {...parts} />
      <DoseWhen {...parts} />
      {/* Asked about the dose, she is asked why there, and once. */}
      {!asking && (
        <Why
          reasons={['rich', 'stuck', 'notNoted', 'sniffed']}
          value={fields.why}
          onChange={(why) => change({ why })}
        />
      )}
      {asking && (
        <Refused
          refusal={asking}
          food={plan.food}
          told={fields.why.trim() !== ''}
          reader={{ world, now, thisPhone }}
          reading={words}
          ways={{
            onSure: (more) => void save(fields, { ...told, ...more }),
            onAmount: meant,
            onBottle: (bottle: BottleId) => instead({ source: bottle }, told),
            onHeldMore: () => void save(fields, { ...told, heldMore: true }),
            onLeave: () => {
              setTold({})
              reset()
            },
          }}
        />
      )}
      {refusal && fromStorage(refusal) && <Notice kind="refusal">{refusalText(refusal, words)}</Notice>}
      <Actions>
        {!asking && (
          <Button submit waiting={busy}>
            Note it
          </Button>
        )}
        <ButtonLink kind="quiet" href="#/">
          Not now
        </ButtonLink>
      </Actions>
    </Form>
  )
}
