/** She counts what is left: what is gone was given on those nights. */
import { useState } from 'react'
import {
  type Fact,
  type FoodId,
  type Lot,
  type LotId,
  nightsByCount,
  ok,
  portionsLeft,
  type TonightLine,
} from '../../../../core/index.ts'
import { Actions, Button } from '../../../parts/Actions.tsx'
import { CountField } from '../../../parts/CountField.tsx'
import type { Ask } from '../../../state/store.ts'
import { lotName, placeName } from '../../../words/names.ts'
import { countedWords } from '../../../words/nights.ts'
import { capital, portions } from '../../../words/numbers.ts'
import type { Reading } from '../../useReading.ts'
import type { ActRefusal, Dosing } from '../useDosing.ts'
import { roundsOf } from './rounds.ts'

type UnloggedCountProps = {
  readonly lines: readonly TonightLine[]
  readonly lots: readonly Lot[]
  readonly reading: Reading
  readonly dosing: Dosing
}

export const UnloggedCount = ({ lines, lots, reading, dosing }: UnloggedCountProps) => {
  const { world, now } = reading
  const [counts, setCounts] = useState<ReadonlyMap<LotId, number | null>>(new Map())
  const countOf = (lot: Lot): number | null => {
    const typed = counts.get(lot.id)
    return typed === undefined ? portionsLeft(lot) : typed
  }
  const used = lots.reduce((sum, lot) => sum + Math.max(0, portionsLeft(lot) - (countOf(lot) ?? portionsLeft(lot))), 0)
  const complete = lots.every((lot) => countOf(lot) !== null)
  const save: Ask<ActRefusal> = (latest, { now: at }) => {
    const facts: Fact[] = []
    for (const food of new Set(lots.map(({ made }) => made.food))) {
      const counted = nightsByCount(latest, { rounds: roundsOf(ofFood(lines, food)), lots: countsOf(food) }, at)
      if (!counted.ok) return counted
      facts.push(...counted.value)
    }
    return ok(facts)
  }
  const countsOf = (food: FoodId) =>
    lots.flatMap((lot) => {
      const counted = countOf(lot)
      return lot.made.food === food && counted !== null ? [{ lot: lot.id, counted }] : []
    })
  return (
    <>
      {lots.map((lot) => (
        <CountField
          key={lot.id}
          label={`${capital(lotName(world, lot.id))}, ${placeName(world, lot.place, now)}: how many are left?`}
          hint={`The book says ${portions(portionsLeft(lot))}.`}
          value={countOf(lot)}
          onChange={(count) => setCounts(new Map(counts).set(lot.id, count))}
        />
      ))}
      <output>{complete && countedWords(used)}</output>
      <Actions>
        <Button waiting={dosing.busy || !complete} onAct={() => void dosing.record(save, { did: 'answered' })}>
          That is what is left
        </Button>
      </Actions>
    </>
  )
}

const ofFood = (lines: readonly TonightLine[], food: FoodId): readonly TonightLine[] =>
  lines.filter((line) => line.food.food === food)
