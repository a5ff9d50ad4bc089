/** What the page about ordering says: why that day, how a parcel would meet the calendar, what can be given away. */
import type { Arrival, Away, Day, OrderBy, Spare, Unattended, Untimely, World } from '../../core/index.ts'
import { dayInFull, dayWords } from './dates.ts'
import { list } from './list.ts'
import { lotName } from './names.ts'
import { capital, millilitres, number, plural, portions } from './numbers.ts'
import { dayNamed } from './ordering.ts'

const days = (count: number): string => plural(count, 'day', 'days')

/** "9 days for it to come and 5 to spare, before the first night without food, Monday, 30 November." */
export const orderWhyWords = ({ leadDays, cushionDays, bareNight }: OrderBy, today: Day): string => {
  const long = `${capital(days(leadDays))} for an order to come and ${number(cushionDays)} to spare`
  return bareNight >= today
    ? `${long}, before the first night without food, ${dayNamed(bareNight, today)}.`
    : `${long}. There has been nothing for a dose since ${dayNamed(bareNight, today)}.`
}

export const awayWords = ({ from, to }: Away, today: Day): string =>
  from === to ? dayNamed(from, today) : `${dayNamed(from, today)}, to ${dayNamed(to, today)}`

const untimelyWords = (untimely: Untimely, today: Day): string => {
  switch (untimely.is) {
    case 'weekend':
      return 'that is a weekend'
    case 'beforeWeekend':
      return 'a day late it would lie over the weekend'
    case 'away':
      return untimely.from === untimely.to
        ? `nobody is at home on ${dayWords(untimely.from, today)}`
        : `nobody is at home from ${dayWords(untimely.from, today)} to ${dayWords(untimely.to, today)}`
    case 'tripSoon':
      return `the days away begin soon after, on ${dayWords(untimely.from, today)}`
  }
}

/** Beside the day to order by, never instead of it. */
export const arrivalWords = (arrival: Arrival, today: Day): string => {
  const { orderedOn, comes, untimely, earlier, later } = arrival
  const when = orderedOn === today ? 'Ordered today' : `Ordered on ${dayWords(orderedOn, today)}`
  const says = `${when}, it would come about ${dayNamed(comes, today)}`
  if (untimely.length === 0) return `${says}: a good day.`
  const better =
    earlier || later
      ? ` Better to order on ${[earlier, later].flatMap((day) => (day ? [dayNamed(day, today)] : [])).join(', or on ')}.`
      : ' No better day was found near it.'
  return `${says}, but ${list(untimely.map((each) => untimelyWords(each, today)))}.${better}`
}

export const unattendedWords = (
  { from, to, days: count, lastGood }: Unattended,
  today: Day,
  freezes: boolean,
): string =>
  `It would be good in the fridge until about ${dayWords(lastGood, today)}, and ${days(count)} of that pass while nobody is at home, from ${dayWords(from, today)} to ${dayWords(to, today)}.${freezes ? ' Freeze it before you go.' : ''}`

/** "12 portions of 1 mL and 4 portions of 0.5 mL": two sizes are never one number. */
const amountWords = (lots: Spare['lots']): string => {
  const bySize = new Map<number, number>()
  for (const { each, count } of lots) bySize.set(each, (bySize.get(each) ?? 0) + count)
  return list([...bySize].map(([each, count]) => `${portions(count)} of ${millilitres(each)}`))
}

export const spareWords = ({ lots, until, short }: Spare, today: Day): string => {
  if (lots.length === 0) return 'Nothing to give away: all of it is needed until an order can come.'
  if (short)
    return `You can give away ${amountWords(lots)}: they would go unused. All the rest is needed until an order can come.`
  return `You can give away ${amountWords(lots)} and never run short: what stays is enough until ${dayWords(until, today)}, and an order made today would have come.`
}

/** "12 from blue clip, of which 4 would go unused": which to give. */
export const spareLotWords = ({ lot, count, unused }: Spare['lots'][number], world: World): string => {
  const which = `${capital(portions(count))} from ${lotName(world, lot)}`
  if (unused === 0) return which
  return unused === count ? `${which}, which would go unused` : `${which}, of which ${number(unused)} would go unused`
}

/** Of one bag, beside the question how many. */
export const spareHereWords = (here: Spare['lots'][number] | undefined): string => {
  if (!here) return 'None of these is to spare.'
  const { count, unused } = here
  const says = `You can give ${portions(count)} of these away and never run short.`
  if (unused === 0) return says
  return `${says} ${unused === count ? 'They would go unused.' : `${number(unused)} of them would go unused.`}`
}

/** What was done, as it is said with Undo beside it. */
export const noted = {
  ordered: (name: string, on: Day, today: Day) =>
    `Noted: ${name} ordered ${on === today ? 'today' : `on ${dayWords(on, today)}`}. Nothing more is said until it is to come.`,
  waiting: (comes: Day, today: Day) => `Noted: it is to come on ${dayNamed(comes, today)}.`,
  never: 'Crossed out: it was never ordered.',
  takes: (lead: number, cushion: number) => `Noted: ${days(lead)} for an order to come, ${number(cushion)} to spare.`,
  away: (away: Away) =>
    away.from === away.to
      ? `On the list: ${dayInFull(away.from)}.`
      : `On the list: ${dayInFull(away.from)} to ${dayInFull(away.to)}.`,
  home: 'Crossed out: somebody is at home.',
}
