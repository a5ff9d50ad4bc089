/** Nothing else is left, but food past its usual day: sniff and look, one touch to use it. */
import { Fragment } from 'react'
import { comesFrom, daysBetween, type Serving, sniffDays, type TonightLine } from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { capital } from '../../../words/numbers.ts'
import { pastWords, takeWords } from '../../../words/tonight.ts'
import type { Reading } from '../../useReading.ts'
import type { Dosing } from '../useDosing.ts'

type PastFoodProps = {
  readonly line: TonightLine
  readonly past: readonly Serving[]
  readonly reading: Reading
  readonly dosing: Dosing
}

/** In the fridge, within a fortnight of its usual time: nothing more is asked once that has been read. */
const soonPast = ({ source }: Serving, line: TonightLine): boolean =>
  source.from === 'bottle' && source.lastGood !== undefined && daysBetween(source.lastGood, line.night) <= sniffDays

export const PastFood = ({ line, past, reading, dosing }: PastFoodProps) =>
  past.map((serving) => (
    <Fragment key={comesFrom(serving.taken)}>
      <p>
        {capital(takeWords(serving, reading.world, reading.now))}. {pastWords(serving, line.night)}
      </p>
      <Actions>
        <Button
          kind="quiet"
          waiting={dosing.busy}
          onAct={() => void dosing.dosed(line, serving, soonPast(serving, line) ? { sure: true } : {})}
        >
          {soonPast(serving, line) ? 'Sniffed: dosed with it' : 'Dosed with it'}
          <span className="for-ears">: {takeWords(serving, reading.world, reading.now)}</span>
        </Button>
      </Actions>
    </Fragment>
  ))
