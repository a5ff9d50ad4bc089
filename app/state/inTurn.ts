/** One thing at a time, in the order asked: a read and the write after it must not see two different pasts. */
export type InTurn = <Value>(work: () => Promise<Value>) => Promise<Value>

export const turns = (): InTurn => {
  let turn: Promise<unknown> = Promise.resolve()
  return (work) => {
    const next = turn.then(work, work)
    turn = next
    return next
  }
}
