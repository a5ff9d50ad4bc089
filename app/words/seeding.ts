/** Live bottles and the night they are poured: what its screens say. */
import {
  addDays,
  type Balance,
  type Day,
  type DeviceSort,
  type Gap,
  type Moment,
  type Needed,
  nightOf,
  type PourNight,
  type RunNow,
  readyRanges,
  reseedWeeks,
  type saltOfPour,
  stillOff,
  type TankDescribed,
  type WaterPlace,
  type Zone,
} from '../../core/index.ts'
import { clock, dayInFull, dayWords, nightFrom, weekday } from './dates.ts'
import { list } from './list.ts'
import { capital, inWords, millilitres, number, plural } from './numbers.ts'
import type { Reading } from './reading.ts'
import { animalWords, placeWords } from './seedingEntries.ts'
import { bare, deviceName, deviceWords, type WhichIs } from './steps.ts'

export const sortOption = (device: DeviceSort) => ({ value: device, label: capital(bare(deviceWords[device])) })
export const deviceOption = (key: string, which: WhichIs) => ({
  value: key,
  label: capital(bare(deviceName(key, which))),
})
export const placeOptions = (['display', 'refugium', 'sump'] as const).map((value) => ({
  value,
  label: capital(placeWords[value].slice(4)),
}))
export const animalOptions = (['copepods', 'rotifers', 'others'] as const).map((value) => ({
  value,
  label: capital(animalWords[value]),
}))

export const bottlesWords = (bottles: number): string =>
  bottles === 0.5 ? 'half a bottle' : plural(bottles, 'bottle', 'bottles')
export const poursWords = (pours: readonly { readonly into: WaterPlace; readonly bottles: number }[]): string =>
  list(pours.map(({ into, bottles }) => `${bottlesWords(bottles)} into ${placeWords[into]}`))

export const neededWords = ({ bottles, exact }: Needed): string =>
  exact === bottles ? bottlesWords(bottles) : `${bottlesWords(bottles)}: ${number(exact)}, rounded up`
/** "If you pour tonight, once more between 12 and 26 December": of a pour not made yet. */
export const reseedWords = (from: Day, today: Day): string =>
  `If you pour tonight, pour once more between ${dayWords(addDays(from, 7 * reseedWeeks.first), today)} and ${dayWords(addDays(from, 7 * reseedWeeks.last), today)}: the first ones have young by then.`

const measuredOf = { ammonia: 'Ammonia', nitrite: 'Nitrite' } as const
const askedOf = {
  ammonia: 'ammonia',
  nitrite: 'nitrite',
  copper: 'copper',
  film: 'what there is to graze',
  temperature: 'the temperature',
  salinity: 'the salinity',
} as const
const usual = (of: keyof typeof readyRanges): string => `${readyRanges[of].least} to ${readyRanges[of].most}`
export const readyHabit = `${usual('celsius')} °C, ${usual('salinity')}\u00a0‰ of salt, no ammonia and no nitrite: common practice; your bottle’s label goes first.`
export const gapWords = (gap: Exclude<Gap, { gap: 'notKnown' }>): string => {
  switch (gap.gap) {
    case 'ammonia':
    case 'nitrite':
      return `${measuredOf[gap.gap]} is at ${number(gap.measured)} mg/L and has to be at 0: the tank has not settled yet.`
    case 'copper':
      return gap.now
        ? 'Copper is in the water: it kills them. It has to be out, filtered over carbon and tested at none.'
        : 'Copper was in it once: filter over carbon and test until there is none.'
    case 'nothingToGraze':
      return 'Nothing to graze yet: wait for a film on the glass, or put in some rubble or algae.'
    case 'temperature':
      return `${number(gap.measured)} °C is too ${gap.high ? 'warm' : 'cold'}: ${usual('celsius')} °C is usual.`
    case 'salinity':
      return `${number(gap.measured)} parts per thousand is too ${gap.high ? 'much' : 'little'}: ${usual('salinity')} is usual.`
    case 'gravityTyped':
      return gravityWords(gap.measured)
  }
}
export const gravityWords = (typed: number): string =>
  `${number(typed)} is a specific gravity, it seems. Here the salt is in parts per thousand: about 35.`
export const notKnownWords = (found: readonly Gap[]): string | undefined => {
  const open = found.flatMap((gap) => (gap.gap === 'notKnown' ? [askedOf[gap.of]] : []))
  return open.length > 0 ? `Not said yet: ${list(open)}.` : undefined
}

type BeforeSaid = {
  readonly tank: TankDescribed
  readonly treated: 'medicine' | 'copper' | undefined
  readonly gaps: readonly Gap[]
  readonly needed: Needed | undefined
}
/** The sentence on top of the page of live bottles. */
export const beforeAnswer = ({ tank, treated, gaps, needed }: BeforeSaid): string => {
  if (treated)
    return `No live bottles into ${tank.name} now: there is ${treated === 'copper' ? 'copper' : 'a medicine'} in it.`
  const real = gaps.filter(({ gap }) => gap !== 'notKnown')
  const how = needed
    ? `${capital(inWords(needed.bottles))} live ${needed.bottles === 1 ? 'bottle' : 'bottles'}`
    : 'Live bottles'
  if (real.length > 0)
    return `Wait with live bottles for ${tank.name}: ${real.length === 1 ? 'one thing stands' : `${inWords(real.length)} things stand`} in the way.`
  return `${how} for ${tank.name}, poured in the dark with the pumps off for an hour.`
}

const nightIs = { best: 'best', fine: 'still fine', decide: 'a decision by now' } as const
/** "tonight, dark from 21:00: best". */
export const pourNightWords = ({ night, dark, is }: PourNight, tank: TankDescribed, now: Moment): string =>
  `${capital(nightFrom(night, nightOf(now, tank)))}: ${nightIs[is]}, dark from ${clock(dark, tank.zone)}`
export const pourNightHint = ({ is, hours }: PourNight, came: boolean): string | undefined =>
  !came
    ? undefined
    : is === 'decide'
      ? `${plural(hours, 'hour', 'hours')} after the door. Hold them open, shaded and at room temperature, pour half now, or darken the tank early today.`
      : `${plural(hours, 'hour', 'hours')} after the door`

export const claimWords = (until: Moment, now: Moment, zone: Zone, today: Day, day: Day): string => {
  const when = `${clock(until, zone)}${day === today ? ' today' : ` on ${weekday(day)}, ${dayWords(day, today)}`}`
  if (now > until) return `The time to claim damage ended at ${when}.`
  const hours = Math.floor((until - now) / 3_600_000)
  const left =
    hours < 1 ? plural(Math.floor((until - now) / 60_000), 'minute', 'minutes') : plural(hours, 'hour', 'hours')
  return `Damage may be claimed until ${when}: ${left} left.`
}
export const lookedOptions = [
  { value: 'lively', label: 'Lively' },
  {
    value: 'stillCold',
    label: 'Still cold, lying quiet',
    hint: 'Cold they lie still: not dead. Judge them once they are warm.',
  },
  { value: 'notSure', label: 'Not sure' },
  { value: 'dead', label: 'Dead, it seems' },
] as const

export const waterOutOptions = [
  { value: 'after', label: 'All of it afterwards', hint: 'from the return chamber: usual' },
  { value: 'before', label: 'All of it before', hint: 'so that nothing just poured leaves' },
  { value: 'half', label: 'Half and half' },
] as const
export const rinseOptions = [
  { value: 'none', label: 'Not rinsed' },
  { value: 'newSaltWater', label: 'With new salt water', hint: 'as much more leaves' },
  { value: 'tankWater', label: 'With tank water', hint: 'borrowed and poured back' },
] as const

/** "21:40", with its day where that is another one. */
export const clockAt = (at: Moment, { zone, today }: Reading, day: Day): string =>
  day === today ? clock(at, zone) : `${clock(at, zone)}, ${weekday(day)}`

/** "17 minutes late", "2 hours and 5 minutes late". */
export const lateWords = (late: number): string => {
  const hours = Math.floor(late / 60)
  const minutes = late % 60
  const said = [
    ...(hours > 0 ? [plural(hours, 'hour', 'hours')] : []),
    ...(minutes > 0 || hours === 0 ? [plural(minutes, 'minute', 'minutes')] : []),
  ]
  return `${list(said)} late`
}
export const hoursOffWords = (hours: number): string => {
  const all = Math.round(hours * 60)
  const [whole, rest] = [Math.floor(all / 60), all % 60]
  return `off for ${[...(whole > 0 ? [`${number(whole)}\u00a0h`] : []), ...(rest > 0 || whole === 0 ? [`${rest}\u00a0min`] : [])].join(' ')}`
}

/** On every screen while pumps are off past their hour. */
export const pumpsOffWords = (tank: string, late: number): string =>
  late > 0 ? `Switch the pumps of ${tank} on: ${lateWords(late)}.` : `Switch the pumps of ${tank} on now.`
/** One line at the top of Tonight. */
export const runLineWords = (tank: string, run: RunNow, zone: Zone): string => {
  const { is, plan, pumps, next } = run
  // Nobody has said that what was off is on.
  if (is === 'stopped')
    return `${tank}: the night was stopped, and ${leftOff(stillOff(run).length)} not ticked as back on`
  if (pumps) return `${tank}: pumps off, back on by ${clock(pumps.backBy, zone)}`
  if (is === 'planned') return `${tank}: live bottles, pumps off at ${clock(plan.off, zone)}`
  if (is === 'overnight') return `${tank}: overnight, the rest at ${clock(plan.morning, zone)}`
  if (is === 'morning') return `${tank}: still off since the night`
  return next ? `${tank}: next at ${clock(next.at, zone)}` : tank
}

const leftOff = (count: number): string => (count === 1 ? 'one thing is' : `${inWords(count)} things are`)

export const leftWords = ({ left }: Balance): string =>
  left > 0
    ? `${millilitres(left)} to take out`
    : left < 0
      ? `${millilitres(-left)} more went out than came: top up with salt water`
      : 'nothing'
/** "The salt goes from 35 to 34.98 ‰: less than a meter shows." */
export const saltWords = ({ before, after, notable }: NonNullable<ReturnType<typeof saltOfPour>>): string =>
  notable
    ? `The salt goes from ${number(before)} to ${number(after)}\u00a0‰, over half a part in a thousand: measure again in the morning.`
    : number(after) === number(before)
      ? `The salt stays at ${number(before)}\u00a0‰.`
      : `The salt goes from ${number(before)} to ${number(after)}\u00a0‰: too little to do anything about.`
/** On the phone's own calendar, where nothing else is said. */
export const pumpsAlarmWords = (tank: string): string => `${tank}: switch the pumps on`
export const morningAlarmWords = (tank: string): string => `${tank}: switch on what is still off since the night`
export const everythingOn = 'Everything on. Lid off. Air in.'
export const letterClosedWords = ({ count, next }: { readonly count: number; readonly next: Day }): string =>
  count === 1
    ? `A letter to yourself opens on ${dayInFull(next)}.`
    : `${capital(inWords(count))} letters to yourself; the next opens on ${dayInFull(next)}.`

/** Said before she begins. Water, electricity and her hands come first. */
export const cautions = [
  'Dry hands at every switch and plug; unplug before hands go into the water. No wet hands at anything under current.',
  'Cuts on the hand: waterproof gloves. Who has a weak immune system lets somebody else do it.',
  'Fish breathing fast at the surface come before everything: pumps on, lid off, air.',
  'Water that is taken out goes down the drain, never into another tank and never to the sea.',
] as const
