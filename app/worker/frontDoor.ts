/**
 * Rooms are told by the hash, so the app has one address, whatever follows its question mark. A deeper path is not ours:
 * the page's relative addresses would miss from there.
 */
export const isFrontDoor = (url: URL, scope: string): boolean => {
  const { origin, pathname } = new URL(scope)
  return url.origin === origin && (url.pathname === pathname || url.pathname === `${pathname}index.html`)
}
