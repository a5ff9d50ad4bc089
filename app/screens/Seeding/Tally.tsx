/** Water in, water out, and what is left to take: entered with a few big keys. */
import {
  balanceOf,
  filled,
  fromMillilitres,
  microlitres,
  type RunNow,
  type SeedingWaterTaken,
  saltOfPour,
  type TankWater,
  toTakeAt,
  type WaterPlace,
} from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Facts } from '../../parts/Facts.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Section } from '../../parts/Section.tsx'
import { capital, millilitres } from '../../words/numbers.ts'
import { bottlesWords, leftWords, saltWords } from '../../words/seeding.ts'
import { placeWords } from '../../words/seedingEntries.ts'
import type { Running } from './useRun.ts'

type TallyProps = { readonly run: RunNow; readonly running: Running }

/** What jugs hold. Millilitres. */
const jugs = [100, 250, 500, 1000] as const
const said = { out: 'taken out', borrowed: 'borrowed', putBack: 'poured back' } as const

const Jugs = ({ running, way }: { readonly running: Running; readonly way: SeedingWaterTaken['way'] }) => (
  <Actions>
    {jugs.map((jug) => (
      <Button
        key={jug}
        kind="quiet"
        waiting={running.act.busy}
        onAct={() =>
          void running.water(fromMillilitres(jug), way, `${millilitres(fromMillilitres(jug))} ${said[way]}.`)
        }
      >
        {millilitres(fromMillilitres(jug))}
        <span className="for-ears"> {said[way]}</span>
      </Button>
    ))}
  </Actions>
)

export const WaterKeys = ({ run, running, step }: TallyProps & { readonly step: string }) => {
  const left = toTakeAt(step, run.plan, run.run)
  return (
    <Section title={left > 0 ? `${millilitres(left)} to take out` : 'Nothing left to take out'}>
      {left > 0 && (
        <Actions>
          <Button
            waiting={running.act.busy}
            onAct={() => void running.water(left, 'out', `${millilitres(left)} taken out.`)}
          >
            All {millilitres(left)} is out
          </Button>
        </Actions>
      )}
      <Jugs running={running} way="out" />
    </Section>
  )
}

export const PourKeys = ({ run, running, place }: TallyProps & { readonly place: WaterPlace }) => (
  <Section title="Or bottle by bottle">
    <Actions>
      {[0.5, 1].map((bottles) => (
        <Button
          key={bottles}
          kind="quiet"
          waiting={running.act.busy}
          onAct={() =>
            void running.pour(
              { into: place, ...filled(bottles, run.plan) },
              `${capital(bottlesWords(bottles))} into ${placeWords[place]}.`,
            )
          }
        >
          {capital(bottlesWords(bottles))}
        </Button>
      ))}
    </Actions>
  </Section>
)

export const Tally = ({ run, running, water }: TallyProps & { readonly water: TankWater }) => {
  const balance = balanceOf(run.run)
  const poured = run.run.pours.reduce((sum, { amount }) => sum + amount, 0)
  const salt = poured > 0 ? saltOfPour(run.plan, water, microlitres(poured)) : undefined
  return (
    <Section title="Water in, water out">
      <Facts
        facts={[
          { term: 'In', fact: millilitres(balance.in) },
          { term: 'Out', fact: millilitres(balance.out) },
          { term: 'Left', fact: leftWords(balance) },
        ]}
      />
      {salt && <p>{saltWords(salt)}</p>}
      <MoreExact label="Taken out">
        <Jugs running={running} way="out" />
      </MoreExact>
      <MoreExact label="Borrowed to rinse or thin with">
        <Jugs running={running} way="borrowed" />
      </MoreExact>
      <MoreExact label="Borrowed water poured back">
        <Jugs running={running} way="putBack" />
      </MoreExact>
    </Section>
  )
}
