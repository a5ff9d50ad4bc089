/** What does not add up, as a question. */
import { crossedOutOrigin, type Moment, type Oddity, type World } from '../../core/index.ts'
import { nightWords } from './dates.ts'
import { bottleName, foodName, lotName, tankName } from './names.ts'
import { capital, millilitres, nights, plural, portions } from './numbers.ts'

export const oddityText = (oddity: Oddity, world: World, now: Moment): string => {
  switch (oddity.what) {
    case 'trayEmptierThanBook':
      return `${capital(portions(oddity.short))} more came out of ${lotName(world, oddity.lot)} than the book had. What is really in it?`
    case 'bottleEmptierThanBook':
      return `${millilitres(oddity.short)} more came out of ${bottleName(world, oddity.bottle, now)} than the book had. What is really in it?`
    case 'loggedTwice': {
      const plan = world.plans.get(oddity.plan)?.at(-1)
      const where = plan ? tankName(world, plan.tank, now) : 'the tank'
      return `Logged twice? Two phones noted a dose for ${where} on ${nightWords(oddity.night)}${oddity.more > 0 ? ` and ${nights(oddity.more)} more` : ''}.`
    }
    case 'unknownStock':
      return crossedOutOrigin(world.history, oddity.thing)
        ? 'An entry names a bottle or tray that was crossed out. Was it there after all?'
        : 'An entry names a bottle or tray that is not on record here. It may come with another phone’s backup.'
    case 'unknownPlan':
      return crossedOutOrigin(world.history, oddity.plan)
        ? 'Doses follow a plan that was crossed out. Nothing is due by it now.'
        : 'A dose follows a plan that is not on record here. It may come with another phone’s backup.'
    case 'doseSetAside':
      return 'More was noted than the bottle holds by the book, so nothing was taken off it yet. How was it?'
    case 'twoBodies':
      return 'Two phones say two things of one entry. Which is right?'
    case 'newerEntries':
      return `${oddity.count === 1 ? 'One entry was' : `${plural(oddity.count, 'entry', 'entries')} were`} written by a newer Smallhours. Kept, and in every backup, but not reckoned with here: take the update on this phone.`
    case 'twoPlans':
      return `Two plans feed ${foodName(world, oddity.food, now)} to ${tankName(world, oddity.tank, now)}, each on its own nights. Is one meant?`
    case 'aheadOfItsWriting':
      return 'An entry is dated later than it was written. Is its day right?'
    case 'countGapMoved': {
      const { bookThen, bookNow, found } = oddity.seen
      const figure = oddity.of === 'portions' ? portions : millilitres
      return `When you counted ${figure(found)}, the book said ${figure(Math.max(0, bookThen))}; with what has arrived since it would have said ${figure(Math.max(0, bookNow))}. Is the count still right?`
    }
  }
}

const names: Readonly<Record<Oddity['what'], string>> = {
  trayEmptierThanBook: 'a tray emptier than the book',
  bottleEmptierThanBook: 'a bottle emptier than the book',
  loggedTwice: 'logged twice',
  unknownStock: 'food not on record',
  unknownPlan: 'a plan not on record',
  twoPlans: 'two plans for one food',
  aheadOfItsWriting: 'a day ahead of its writing',
  doseSetAside: 'more than a bottle holds',
  twoBodies: 'two phones saying two things',
  newerEntries: 'entries of a newer version',
  countGapMoved: 'a count that may have changed',
}
/** What a settled question was about, from its key. A newer version may have asked what this one does not. */
export const questionName = (key: string): string | undefined => {
  const [what = ''] = key.split(':')
  return Object.hasOwn(names, what) ? names[what as Oddity['what']] : undefined
}

export const theirsUnreadable =
  'This version cannot read it: it was written by a newer Smallhours, or is no entry at all.'
