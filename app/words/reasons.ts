/** Reasons as chips; any may be skipped, and a few words of her own do as well. */
const reasons = {
  miscounted: 'miscounted',
  broken: 'broken',
  dropped: 'dropped it',
  thawed: 'thawed',
  smelt: 'smelt off',
  pastItsDay: 'past its day',
  notNoted: 'a dose not noted',
  spilt: 'spilt',
  givenAway: 'given away',
  away: 'away',
  hazy: 'water was hazy',
  mistake: 'a slip of the finger',
  putBack: 'it went back, still hard',
  wrongTank: 'it went into another tank',
  twoBodies: 'two phones said two things',
  putRight: 'put right',
  rich: 'fed richly on purpose',
  stuck: 'two were stuck together',
  sniffed: 'sniffed and looked: fine',
  didNotHappen: 'it did not happen',
  brokenDown: 'broken down',
  sold: 'sold or given away',
  movedHouse: 'moved house',
  takenDown: 'taken down',
  leak: 'it leaked',
  anotherFood: 'another food instead',
  notSold: 'no longer sold',
  tooDear: 'too dear',
  tankRests: 'the tank rests',
  newFish: 'new fish',
  labelGone: 'its label is gone',
  knockedIn: 'knocked in',
} as const

export type Reason = keyof typeof reasons

export const reasonText = (why: string): string => (Object.hasOwn(reasons, why) ? reasons[why as Reason] : why)
export const reasonOptions = <const Known extends Reason>(...known: readonly Known[]) =>
  known.map((value) => ({ value, label: reasons[value] }))
