/**
 * Writes a ledger the way phones do, so that a test reads as what happened: facts with growing stamps, folded to a world.
 * Nothing here knows what a right answer is.
 */
import {
  type DeviceId,
  type Entry,
  type Fact,
  fold,
  isDay,
  isZone,
  type Moment,
  momentAt,
  nextStamp,
  type Result,
  type Stamp,
  type World,
  type Zone,
} from '../../core/index.ts'

export const zone = (name: string): Zone => {
  if (!isZone(name)) throw new Error(`${name} is not a zone`)
  return name
}
export const london = zone('Europe/London')

/** A moment as the wall clock shows it: `at('2027-06-10 21:42')`. */
export const at = (text: string, where: Zone = london): Moment => {
  const [day = '', time = ''] = text.split(' ')
  const [hours, minutes, seconds = 0] = time.split(':').map(Number)
  if (!isDay(day) || hours === undefined || minutes === undefined) throw new Error(`${text} is no time`)
  return (momentAt(day, hours * 60 + minutes, where) + seconds * 1000) as Moment
}

/** What a request gave; a refusal the test did not expect ends it. */
export const done = <Value>(result: Result<Value, unknown>): Value => {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.refusal)}`)
  return result.value
}
export const refusalOf = <Refusal>(result: Result<unknown, Refusal>): Refusal => {
  if (result.ok) throw new Error(`not refused: ${JSON.stringify(result.value)}`)
  return result.refusal
}

export const labPhone = 'labphone' as DeviceId
export const kitchenPhone = 'kitchenphone' as DeviceId

export type Book = {
  readonly entries: () => readonly Entry<Fact>[]
  readonly world: () => World
  /** Written down when it happened, or right after the entry before it. */
  readonly note: (...facts: readonly Fact[]) => readonly Stamp[]
  /** Written down at another moment than the one meant. */
  readonly noteAt: (written: Moment, ...facts: readonly Fact[]) => readonly Stamp[]
  /** Writes what a request on the world as it stands gives. */
  readonly does: (request: (world: World) => Result<readonly Fact[], unknown>) => readonly Stamp[]
}

/** One phone's ledger. `known` is what it has from the other phone. */
export const bookOf = (phone: DeviceId, known: readonly Entry<Fact>[] = []): Book => {
  const entries = [...known]
  let latest: Stamp | undefined = known
    .map(({ id }) => id)
    .sort()
    .at(-1)
  const write = (fact: Fact, written: Moment): Stamp => {
    latest = nextStamp(latest, written, phone)
    entries.push({ id: latest, fact })
    return latest
  }
  const note = (...facts: readonly Fact[]) => facts.map((fact) => write(fact, fact.at))
  return {
    entries: () => [...entries],
    world: () => fold(entries),
    note,
    noteAt: (written, ...facts) => facts.map((fact) => write(fact, written)),
    does: (request) => note(...done(request(fold(entries)))),
  }
}

type Story = Fact | readonly Fact[] | ((world: World) => readonly Fact[])

/** The lab phone's ledger with these facts in it, one after the other. */
export const given = (...story: Story[]): Book => {
  const book = bookOf(labPhone)
  for (const part of story) {
    const facts = typeof part === 'function' ? part(book.world()) : part
    book.note(...('kind' in facts ? [facts] : facts))
  }
  return book
}
