/** The diary's sentences for live bottles and the night they are poured. */
import {
  type Moment,
  planOfRun,
  type RunId,
  type SeedingFact,
  type World,
  whichOn,
  type Zone,
} from '../../core/index.ts'
import { clock, dayWords, nightWords } from './dates.ts'
import { list } from './list.ts'
import { tankName } from './names.ts'
import { millilitres, number, plural } from './numbers.ts'
import type { Reading } from './reading.ts'
import { reasonText } from './reasons.ts'
import { stepName } from './steps.ts'

export const animalWords = { copepods: 'copepods', rotifers: 'rotifers', others: 'other animals' } as const
export const placeWords = { display: 'the display', sump: 'the sump', refugium: 'the refugium' } as const
const looked = {
  lively: 'lively',
  stillCold: 'still cold, lying quiet',
  notSure: 'not sure they live',
  dead: 'dead, it seems',
} as const
const because = (why: string | undefined): string => (why ? ` (${reasonText(why)})` : '')
const at = (moment: Moment, zone: Zone): string => clock(moment, zone)

export const seedingEntryText = (fact: SeedingFact, world: World, now: Moment, { today, zone }: Reading): string => {
  const planOf = (run: RunId) => {
    const known = world.runs.get(run)
    return known && planOfRun(known, now)
  }
  const tankOf = (run: RunId): string => {
    const plan = planOf(run)
    return plan ? tankName(world, plan.tank, now) : 'a run not on record'
  }
  const whichIn = (run: RunId) => {
    const plan = planOf(run)
    return plan && whichOn(world, plan.tank)
  }
  switch (fact.kind) {
    case 'equipmentDescribed': {
      const stops = fact.devices.filter((device) => device.stops).length
      return `What runs on ${tankName(world, fact.tank, now)}: ${plural(fact.devices.length, 'device', 'devices')}, of which ${number(stops)} stop for a pour.`
    }
    case 'tankTreated':
      return fact.with === 'nothing'
        ? `No medicine and no copper in ${tankName(world, fact.tank, now)}.`
        : `${fact.with === 'copper' ? 'Copper' : 'A medicine'} in ${tankName(world, fact.tank, now)}${fact.what ? `: ${fact.what}` : ''}.`
    case 'podHuntersNoted':
      return `${tankName(world, fact.tank, now)} has ${fact.there ? '' : 'no '}fish that hunt pods${fact.what ? `: ${fact.what}` : ''}.`
    case 'liveBottlesCame': {
      const what = fact.bottles.map(
        ({ animals, count, holds }) =>
          `${plural(count, 'bottle', 'bottles')} of ${animalWords[animals]}, ${millilitres(holds)} each`,
      )
      return `Live bottles came at ${at(fact.came, zone)}: ${list(what)}; ${looked[fact.looked]}${fact.words ? `. ${fact.words}` : ''}.`
    }
    case 'liveBottlesUncapped':
      return 'Uncapped the live bottles.'
    case 'seedingPlanned': {
      const where = fact.pours.map(
        ({ into, bottles }) => `${plural(bottles, 'bottle', 'bottles')} into ${placeWords[into]}`,
      )
      const first = world.runs.get(fact.run)?.planned[0]
      const begins = first && first.at < fact.at ? 'Plan changed for' : 'Planned for'
      return `${begins} ${tankName(world, fact.tank, now)}, ${nightWords(fact.night)}, ${dayWords(fact.night, today)}: ${list(where)}, pumps off at ${at(fact.off, zone)}${because(fact.anyway)}.`
    }
    case 'seedingStepDone':
      return `${tankOf(fact.run)}: ${stepName(fact.step, whichIn(fact.run))}.`
    case 'seedingWaterTaken': {
      const way = { out: 'out', borrowed: 'borrowed', putBack: 'put back' } as const
      return `${tankOf(fact.run)}: ${millilitres(fact.amount)} of tank water ${way[fact.way]}.`
    }
    case 'seedingPoured':
      return `${tankOf(fact.run)}: poured ${plural(fact.bottles, 'bottle', 'bottles')} into ${placeWords[fact.into]}, ${millilitres(fact.amount)}${fact.rinse > 0 ? ` and ${millilitres(fact.rinse)} of rinse` : ''}.`
    case 'seedingStopped':
      return fact.because === 'fishBreathingHard'
        ? `${tankOf(fact.run)}: fish breathed hard, everything on${because(fact.why)}.`
        : `${tankOf(fact.run)}: called off${because(fact.why)}.`
    case 'letterWritten':
      return `A letter for ${dayWords(fact.opens, today)}, about ${tankName(world, fact.tank, now)}.`
  }
}
