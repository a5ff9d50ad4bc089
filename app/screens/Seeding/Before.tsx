/** Before live bottles: may they come, how many, and the way to each part of the night. */
import {
  bottlesNeeded,
  doseWater,
  equipmentAt,
  gaps,
  lastNight,
  lettersClosed,
  lettersOpen,
  openRuns,
  parcelsWaiting,
  podHuntersAt,
  treatedAt,
  wallDay,
} from '../../../core/index.ts'
import { Actions, ButtonLink } from '../../parts/Actions.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Notice } from '../../parts/Notice.tsx'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { dayInFull, dayWords } from '../../words/dates.ts'
import { beforeAnswer, cautions, letterClosedWords, runLineWords } from '../../words/seeding.ts'
import { beforeFields, readBefore } from './beforeFields.ts'
import { HowMany } from './HowMany.tsx'
import type { OfTank } from './ofTank.ts'
import { Ready } from './Ready.tsx'
import { Treated } from './Treated.tsx'

export const Before = ({ tank, reading }: OfTank) => {
  const { world, now, today } = reading
  const { tank: id } = tank
  const { fields, change } = useDraft(`seeding/before/${id}`, beforeFields)
  const equipment = equipmentAt(world, id, now)
  const treated = treatedAt(world, id, now)?.with
  const hunters = podHuntersAt(world, id, now)?.there
  const { answers, reach, found } = readBefore(fields)
  const gap = gaps(answers)
  const water = doseWater(tank.water)
  const needed = water && reach !== undefined ? bottlesNeeded(water, reach, hunters ?? false) : undefined
  const runs = openRuns(world, now).filter(({ plan }) => plan.tank === id)
  const over = lastNight(world, id, now)
  const waiting = parcelsWaiting(world, now)
  const closed = lettersClosed(world, id, today)
  const act = (href: string, says: string, primary: boolean) => (
    <ButtonLink kind={primary ? 'primary' : 'quiet'} href={`#/seeding/${id}/${href}`}>
      {says}
    </ButtonLink>
  )
  return (
    <Page
      title="Live bottles"
      when={tank.name}
      answer={beforeAnswer({
        tank,
        treated: treated === 'nothing' ? undefined : treated,
        gaps: gap,
        needed: needed?.ok ? needed.value : undefined,
      })}
    >
      {lettersOpen(world, id, today).map((letter) => (
        <Notice key={letter.at} title={`Your letter of ${dayInFull(wallDay(letter.at, tank.zone))}`}>
          <p className="letter">{letter.text}</p>
        </Notice>
      ))}
      {runs.map((run) => (
        <p key={run.run.id}>
          <a href={`#/seeding/run/${run.run.id}`}>{runLineWords(tank.name, run, tank.zone)}</a>
        </p>
      ))}
      {over && (
        <p>
          <a href={`#/seeding/run/${over.run.id}`}>The night of {dayWords(over.plan.night, today)}</a>
        </p>
      )}
      <Actions>
        {act('plan', 'Plan the night', equipment !== undefined && waiting.length > 0)}
        {act(
          'arrival',
          waiting.length > 0 ? 'The bottles that came' : 'Bottles have come',
          equipment !== undefined && waiting.length === 0,
        )}
        {act('equipment', equipment ? 'What runs here' : 'Say first what runs here', equipment === undefined)}
        {act('poured', 'Already poured', false)}
      </Actions>
      <HowMany
        tank={tank}
        reading={reading}
        fields={fields}
        change={change}
        needed={needed}
        places={equipment?.places.map(({ place }) => place) ?? ['display']}
        found={found}
      />
      <Ready fields={fields} change={change} found={found} gaps={gap} reading={reading} />
      <Treated tank={tank} reading={reading} />
      <Section title="With care">
        <MoreExact label="Water, electricity, hands and fish">
          <ul>
            {cautions.map((caution) => (
              <li key={caution}>{caution}</li>
            ))}
          </ul>
        </MoreExact>
        {closed && <p>{letterClosedWords(closed)}</p>}
      </Section>
    </Page>
  )
}
