/** A short buzz in a wet hand, where the phone has one. Nothing depends on it. */
export const buzz = (): void => {
  if ('vibrate' in navigator) navigator.vibrate([30, 60, 30])
}
