/** What tabs and the worker tell each other. One union, so that no name is typed twice. */
export type TabMessage =
  /** Something is on disk that the others have not read. */
  | { readonly type: 'appended' }
  /** A matter of this phone has changed, its id perhaps. */
  | { readonly type: 'deviceChanged' }
  /** A picture has come or gone. */
  | { readonly type: 'picturesChanged' }

/** The made-up household's tabs talk among themselves. */
export const channelOf = (ledger: string): string => `${ledger}-tabs`

/** What the page asks of a worker that waits; the name is the one the library on the page sends. */
export const takeOver = 'SKIP_WAITING'

/** Under this name the browser is asked to wake the worker now and then. */
export const eveningSync = 'evening'

/** What the worker tells a page it brings to the front: the page a touched nudge is about. */
export type WorkerMessage = { readonly type: 'bring'; readonly page: string }

/** What a page asks of the worker when a nudge may be due: to look for itself. */
export const reconcileNow = 'reconcile'
