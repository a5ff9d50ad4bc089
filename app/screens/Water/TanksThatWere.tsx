/** Tanks that were kept once: their past stays, and each can come back. */
import { ok, type TankDescribed } from '../../../core/index.ts'
import { Button } from '../../parts/Actions.tsx'
import { Line, Lines } from '../../parts/Lines.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Section } from '../../parts/Section.tsx'
import { useRequest } from '../../state/useRequest.ts'
import { refusalText } from '../../words/refusals.ts'
import { doseWaterWords } from '../../words/volume.ts'
import type { Reading } from '../useReading.ts'

type TanksThatWereProps = { readonly tanks: readonly TankDescribed[]; readonly reading: Reading }

export const TanksThatWere = ({ tanks, reading }: TanksThatWereProps) => {
  const { busy, refusal, send } = useRequest<never>()
  if (tanks.length === 0) return null
  // Described again as it was: its plans ended with it, and are made again by whoever wants them.
  const back = (tank: TankDescribed) => void send((_, { now }) => ok([{ ...tank, at: now }]))
  return (
    <Section title="Tanks that were">
      {refusal && <Notice kind="refusal">{refusalText(refusal, reading)}</Notice>}
      <p>Their past is in the diary. Their plans ended with them.</p>
      <Lines>
        {tanks.map((tank) => (
          <Line
            key={tank.tank}
            end={
              <Button kind="quiet" waiting={busy} onAct={() => back(tank)}>
                Bring it back<span className="for-ears">: {tank.name}</span>
              </Button>
            }
          >
            {tank.name}, {doseWaterWords(tank.water)}
          </Line>
        ))}
      </Lines>
    </Section>
  )
}
