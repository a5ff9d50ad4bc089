/** A few lines of text leave the app: by the phone's own sheet, else by way of its clipboard, else marked on the page. */

/** In the very touch: browsers forget it within seconds. Undefined: she closed the sheet. */
export const handOn = async (
  text: string,
  shown: HTMLElement | null,
): Promise<'shared' | 'copied' | 'chosen' | undefined> => {
  try {
    if (typeof navigator.share === 'function') {
      await navigator.share({ text })
      return 'shared'
    }
  } catch (error) {
    // Anything else than a closed sheet (a policy, nothing to share with) still leaves the other ways.
    if (error instanceof DOMException && error.name === 'AbortError') return undefined
  }
  try {
    await navigator.clipboard.writeText(text)
    return 'copied'
  } catch {
    if (shown) getSelection()?.selectAllChildren(shown)
    return 'chosen'
  }
}
