/** The diary's sentences for the small life. */
import type { Moment, WatchFact, World } from '../../core/index.ts'
import { formName } from './forms.ts'
import { list } from './list.ts'
import { tankName } from './names.ts'
import { number, plural } from './numbers.ts'
import { reasonText } from './reasons.ts'
import { animalWords, placeWords } from './seedingEntries.ts'

const looking = { torch: 'by torch', pane: 'on the pane by day', jar: 'in a jar' } as const
const kindSays = {
  harmless: 'harmless',
  watch: 'one to watch',
  trap: 'one to trap and keep apart',
  unsure: 'unsure, into a jar',
} as const

export const watchEntryText = (fact: WatchFact, world: World, now: Moment): string => {
  if (fact.kind === 'photoKept') return `A photo${fact.words ? `: ${fact.words}` : ''}.`
  const tank = tankName(world, fact.tank, now)
  switch (fact.kind) {
    case 'livePoured': {
      const what = list(fact.animals.map((each) => animalWords[each])) || 'live bottles'
      const where = fact.pours.map(
        ({ into: place, bottles }) => `${plural(bottles, 'bottle', 'bottles')} into ${placeWords[place]}`,
      )
      return `Poured ${what} into ${tank}: ${list(where)}${fact.why ? ` (${reasonText(fact.why)})` : ''}.`
    }
    case 'smallLifeCounted': {
      const where = fact.where ? `, ${fact.where}` : ''
      const counts = fact.counts.map((each) => number(each))
      return `Looked at ${tank} ${looking[fact.looked.how]}${where}: ${list(counts)} counted${fact.words ? `. ${fact.words}` : ''}.`
    }
    case 'kindSeen': {
      const what = fact.form === undefined ? 'Something small' : formName(fact.form)
      return `${what} in ${tank}${fact.where ? `, ${fact.where}` : ''}: ${kindSays[fact.says]}${fact.words ? `. ${fact.words}` : ''}.`
    }
  }
}
