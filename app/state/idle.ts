/** Later, when nobody is waiting for anything. Not every browser can say when that is. */
export const whenIdle = (work: () => void) => {
  if ('requestIdleCallback' in window) window.requestIdleCallback(work, { timeout: 10_000 })
  else setTimeout(work, 2_000)
}
