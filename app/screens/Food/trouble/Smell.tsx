/** Smelt at and looked at, against its own first sniff; what it went into lately is listed where it is in doubt. */
import { useState } from 'react'
import {
  type BottleId,
  dosesFrom,
  type FoodSmelled,
  type FoodThing,
  firstSniff,
  frozenFrom,
  portionsLeft,
  smellFood,
  thingOf,
} from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { Choice } from '../../../parts/Choice.tsx'
import { Field } from '../../../parts/Field.tsx'
import { Form } from '../../../parts/Form.tsx'
import { Line, Lines } from '../../../parts/Lines.tsx'
import { Page } from '../../../parts/Page.tsx'
import { Section } from '../../../parts/Section.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { bottleName, lotName, tankName } from '../../../words/names.ts'
import { capital, millilitres, portions } from '../../../words/numbers.ts'
import { asideWords, sniffOptions, sniffWords, strongIsNormal, tracedWords } from '../../../words/trouble.ts'
import { SaidAndUndo, type SaidDone } from '../../SaidAndUndo.tsx'
import { Unfinished } from '../../Unfinished.tsx'
import { type Reading, useReading } from '../../useReading.ts'
import { NotHere } from '../NotHere.tsx'
import { NotNow } from '../NotNow.tsx'
import { Refused } from '../Refused.tsx'
import { placed, trouble, useAct } from '../useAct.ts'

type SmellFields = { readonly found: FoodSmelled['found'] | ''; readonly words: string }

const saidWords: Record<FoodSmelled['found'], string> = {
  first: 'Noted: its first sniff.',
  good: 'Noted: good, and in use.',
  unsure: 'Noted, and set aside.',
  off: 'Noted, and set aside.',
}

export const Smell = ({ thing }: { readonly thing: FoodThing }) => {
  const reading = useReading()
  const { world, now } = reading
  const act = useAct()
  const [said, setSaid] = useState<SaidDone>()
  const [tried, setTried] = useState(false)
  const id = 'bottle' in thing ? thing.bottle : thing.lot
  const { fields, change: type, clear, restoredFrom } = useDraft<SmellFields>(`smell/${id}`, { found: '', words: '' })
  const it = thingOf(world, thing)
  if (!it) return <NotHere title="Smell and look" says="This is not on record." />
  const name = 'bottle' in thing ? capital(bottleName(world, thing.bottle, now)) : lotName(world, thing.lot)
  const first = firstSniff(world, thing)
  const last = it.smelled.at(-1)
  const change = (changed: Partial<SmellFields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    setTried(true)
    const { found, words } = fields
    const written = await act.send((latest, at) =>
      found
        ? placed(smellFood(latest, { thing, found, ...(words.trim() ? { words: words.trim() } : {}) }, at.now), {
            howItSmelt: 'words',
          })
        : trouble('found', { why: 'goodOrNot' }),
    )
    if (!written || !found) return
    void clear()
    setTried(false)
    setSaid({ says: saidWords[found], written })
    document.documentElement.scrollTop = 0
  }
  const doubtful = it.aside !== undefined || fields.found === 'unsure' || fields.found === 'off'
  return (
    <Page
      title={`Smell and look: ${name}`}
      answer={first ? sniffWords(first, reading) : 'Its first sniff is not on record yet.'}
    >
      <div>
        <SaidAndUndo said={said} reading={reading} onUndone={() => setSaid(undefined)} />
        {it.aside && <p>{capital(asideWords(it.aside, reading))}.</p>}
        {last && last !== first && it.aside?.because !== 'smell' && <p>Last time: {sniffWords(last, reading)}</p>}
        {!first && <p className="shelf-facts">{strongIsNormal}</p>}
      </div>
      <Form onSend={save}>
        <Unfinished {...reading} since={restoredFrom} onFresh={() => void clear()} />
        <Choice
          label={first ? 'Beside its first sniff, how is it now?' : 'How is it?'}
          options={sniffOptions(first !== undefined)}
          value={fields.found || null}
          onChange={(found) => change({ found })}
          error={act.wrong('found') ?? (tried && !fields.found ? 'Good, unsure or off?' : undefined)}
        />
        <Field
          label="How does it smell and look?"
          hint={
            fields.found === 'first'
              ? 'In your own words: you will read them again.'
              : 'In your own words. It may be skipped.'
          }
          lines={2}
          value={fields.words}
          onChange={(words) => change({ words })}
          error={act.wrong('words')}
        />
        <Refused act={act} />
        <Actions>
          <Button submit waiting={act.busy}>
            Note it
          </Button>
          <NotNow clear={clear} />
        </Actions>
      </Form>
      {doubtful && <WentInto thing={thing} reading={reading} />}
    </Page>
  )
}

const WentInto = ({ thing, reading }: { readonly thing: FoodThing; readonly reading: Reading }) => {
  const { world, now, today } = reading
  const doses = dosesFrom(world, thing, today)
  return (
    <>
      <Section title="Given from it in the last seven nights">
        {doses.length === 0 ? (
          <p>Nothing is on record.</p>
        ) : (
          <>
            <Lines>
              {doses.map(({ entry, tank, night, amount }) => (
                <Line key={`${entry}/${tank}/${night}`}>
                  {tracedWords(tankName(world, tank, now), millilitres(amount), night, today)}
                </Line>
              ))}
            </Lines>
            <p className="shelf-facts">
              Look at the water and the fish in the morning. Most likely nothing is to be seen.
            </p>
          </>
        )}
      </Section>
      {'bottle' in thing && <FrozenEarlier bottle={thing.bottle} reading={reading} />}
    </>
  )
}

type FrozenEarlierProps = { readonly bottle: BottleId; readonly reading: Reading }

const FrozenEarlier = ({ bottle, reading }: FrozenEarlierProps) => {
  const { world } = reading
  const lots = frozenFrom(world, bottle)
  if (lots.length === 0) return null
  return (
    <Section title="Frozen from it earlier">
      <p className="shelf-facts">Frozen before this, they may be as good as ever. Smell one as it thaws.</p>
      <Lines>
        {lots.map((lot) => (
          <Line key={lot.id} end={portions(portionsLeft(lot))}>
            <a className="kind-link" href={`#/food/lot/${lot.id}/smell`}>
              {lot.made.mark}
            </a>
            <br />
            <span className="shelf-facts">{lot.aside ? `${capital(asideWords(lot.aside, reading))}.` : 'In use.'}</span>
          </Line>
        ))}
      </Lines>
    </Section>
  )
}
