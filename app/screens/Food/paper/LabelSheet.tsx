/** Labels for the bags in the freezer, to print or to copy with a pen; and the way back for what the pen has ticked. */
import './paper.css'
import { useState } from 'react'
import { type BagToLabel, bagsToLabel, type LotId } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { Choice } from '../../../parts/Choice.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { Notice } from '../../../parts/Notice.tsx'
import { Page } from '../../../parts/Page.tsx'
import { Picks } from '../../../parts/Picks.tsx'
import { useDraft } from '../../../state/useDraft.ts'
import { list } from '../../../words/list.ts'
import { placeName } from '../../../words/names.ts'
import { labelsAnswer, warningNames } from '../../../words/paper.ts'
import { SaidAndUndo, type SaidDone } from '../../SaidAndUndo.tsx'
import { type Reading, useReading } from '../../useReading.ts'
import { Label, LabelByHand } from './Label.tsx'
import { TicksForm } from './TicksForm.tsx'

/** A list as long as this is folded: whoever wants them all need not scroll past it. */
const few = 6

type Fields = {
  /** Only what is not as it would be by itself: a new bag is chosen, and one that has passed its day no longer is. */
  readonly touched: Readonly<Record<LotId, boolean>>
  readonly way: 'print' | 'hand'
  readonly ticksOf: string
}

/** Named by its mark; where two share one, by its place too. */
const bagName = ({ lot, warnings }: BagToLabel, bags: readonly BagToLabel[], { world, now }: Reading): string => {
  const twin = bags.some((other) => other.lot !== lot && other.lot.made.mark === lot.made.mark)
  const place = twin ? [placeName(world, lot.place, now)] : []
  const says = warnings.length > 0 ? [list(warnings.map((warning) => warningNames[warning]))] : []
  return [lot.made.mark, ...place, ...says].join(', ')
}

/** @param only the one bag whose page she came from */
export const LabelSheet = ({ only }: { readonly only?: LotId | undefined }) => {
  const reading = useReading()
  const { world, now, today } = reading
  const first: Fields = { touched: {}, way: 'print', ticksOf: only ?? '' }
  const { fields, change } = useDraft(only ? `labels/${only}` : 'labels', first)
  const [said, setSaid] = useState<SaidDone>()
  const bags = bagsToLabel(world, now, today)
  const byItself = ({ lot, warnings }: BagToLabel): boolean =>
    only === undefined ? warnings.length === 0 : lot.id === only
  const isChosen = (bag: BagToLabel): boolean => fields.touched[bag.lot.id] ?? byItself(bag)
  const chosen = bags.filter(isChosen)
  const touch = (wanted: (bag: BagToLabel) => boolean) =>
    change({
      touched: Object.fromEntries(
        bags.filter((bag) => wanted(bag) !== byItself(bag)).map((bag) => [bag.lot.id, wanted(bag)]),
      ),
    })
  const ticksOf = bags.find(({ lot }) => lot.id === fields.ticksOf) ?? (bags.length === 1 ? bags[0] : undefined)
  const choose = (
    <>
      <Picks
        label="Which bags?"
        hint="What is past its day, set aside or thawed is labelled only when you touch it, and then the label says so."
        options={bags.map((bag) => ({ value: bag.lot.id, label: bagName(bag, bags, reading) }))}
        values={chosen.map(({ lot }) => lot.id)}
        onChange={(ids) => touch(({ lot }) => ids.includes(lot.id))}
      />
      {bags.length > few && (
        <Actions>
          <Button kind="quiet" onAct={() => touch(({ warnings }) => warnings.length === 0)}>
            All in use
          </Button>
          <Button kind="quiet" onAct={() => touch(() => false)}>
            None
          </Button>
        </Actions>
      )}
    </>
  )
  return (
    <Page title="Labels" answer={labelsAnswer(chosen.length, bags.length)}>
      {bags.length === 0 ? (
        <p>
          <a href="#/food">All the food there is</a>
        </p>
      ) : (
        <>
          {bags.length > few ? <MoreExact label="Choose the bags">{choose}</MoreExact> : choose}
          <Choice
            label="With a printer?"
            options={[
              { value: 'print', label: 'Print them', hint: 'On plain paper, to cut out and stick on with tape.' },
              { value: 'hand', label: 'Copy them by hand', hint: 'The same in big plain lines, for a freezer pen.' },
            ]}
            value={fields.way}
            onChange={(way) => change({ way })}
          />
          {chosen.length > 0 && fields.way === 'print' && (
            <Actions>
              <Button onAct={() => window.print()}>Print</Button>
            </Actions>
          )}
          {chosen.length > 0 && (
            <ul className="paper labels">
              {chosen.map((bag) =>
                fields.way === 'print' ? (
                  <Label key={bag.lot.id} bag={bag} reading={reading} />
                ) : (
                  <LabelByHand key={bag.lot.id} bag={bag} reading={reading} />
                ),
              )}
            </ul>
          )}
          <Notice kind="caution">Squeeze the air out and freeze the bags flat, away from people’s food.</Notice>
          <MoreExact label="Ticks made with a pen">
            {bags.length > 1 && (
              <Choice
                label="On which bag?"
                options={bags.map((bag) => ({ value: bag.lot.id as string, label: bagName(bag, bags, reading) }))}
                value={fields.ticksOf === '' ? null : fields.ticksOf}
                onChange={(id) => change({ ticksOf: id })}
              />
            )}
            {ticksOf && (
              <TicksForm
                key={ticksOf.lot.id}
                lot={ticksOf.lot}
                onDone={(says, written = []) => setSaid({ says, written })}
              />
            )}
          </MoreExact>
          <SaidAndUndo said={said} reading={reading} onUndone={() => setSaid(undefined)} />
        </>
      )}
    </Page>
  )
}
