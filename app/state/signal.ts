/** Who wants to hear that something has changed. */
export type Signal = {
  readonly subscribe: (listen: () => void) => () => void
  readonly tell: () => void
}

export const signal = (): Signal => {
  const listeners = new Set<() => void>()
  return {
    subscribe: (listen) => {
      listeners.add(listen)
      return () => listeners.delete(listen)
    },
    tell: () => {
      for (const listen of [...listeners]) listen()
    },
  }
}
