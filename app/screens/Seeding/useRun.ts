/** What can be done in the pumps-off night, each with one touch, and taken back with one. */
import { useState } from 'react'
import {
  type Entry,
  type Fact,
  type Microlitres,
  notePour,
  ok,
  type RunNow,
  readStep,
  type SeedingPoured,
  type SeedingStopped,
  type SeedingWaterTaken,
  type Stamp,
  stopRun,
  takeWater,
  tickStep,
  toPourAt,
  whichOn,
} from '../../../core/index.ts'
import { buzz } from '../../state/haptic.ts'
import { useUndo } from '../../state/useUndo.ts'
import { stepName } from '../../words/steps.ts'
import type { Reading } from '../useReading.ts'
import { crossOut, placed, type SeedingAsk, useSeeding } from './useSeeding.ts'

export const useRun = ({ plan, run: { id } }: RunNow, reading: Reading) => {
  const act = useSeeding(reading)
  const which = whichOn(reading.world, plan.tank)
  const undo = useUndo()
  const [last, setLast] = useState<{ readonly says: string; readonly written: readonly Entry<Fact>[] }>()
  const write = async (ask: SeedingAsk, says: string) => {
    const written = await act.send(ask)
    if (!written || written.length === 0) return
    buzz()
    setLast({ says, written })
    undo.begin()
  }
  return {
    act,
    which,
    nameOf: (step: string) => stepName(step, which),
    undo,
    says: last?.says ?? '',
    /** A pour ticked is poured as planned, but for what she has said of it before. */
    tick: (step: string, says: string) =>
      write((world, { now }) => {
        const ticked = placed(tickStep(world, { run: id, step }, now))
        const place = readStep(step)?.place
        const run = world.runs.get(id)
        const rest = readStep(step)?.does === 'pour' && place && run ? toPourAt(place, plan, run) : undefined
        if (!ticked.ok || !rest) return ticked
        const poured = placed(notePour(world, { run: id, ...rest }, now))
        return poured.ok ? ok([...poured.value, ...ticked.value]) : poured
      }, says),
    untick: (entry: Stamp) => void act.send(crossOut([{ id: entry }])),
    water: (amount: Microlitres, way: SeedingWaterTaken['way'], says: string) =>
      write((world, { now }) => placed(takeWater(world, { run: id, amount, way }, now)), says),
    pour: (poured: Omit<SeedingPoured, 'kind' | 'at' | 'run'>, says: string) =>
      write((world, { now }) => placed(notePour(world, { run: id, ...poured }, now)), says),
    stop: (because: SeedingStopped['because'], says: string) =>
      write((world, { now }) => placed(stopRun(world, { run: id, because }, now)), says),
    takeBack: async () => {
      if (!last || !(await act.send(crossOut(last.written)))) return
      undo.end()
      setLast(undefined)
    },
  }
}
export type Running = ReturnType<typeof useRun>
