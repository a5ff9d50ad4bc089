/** Bars are kept by the middle run: the first is cold, and now and then the machine looks elsewhere. */
export const median = (times: readonly number[]): number => {
  const sorted = [...times].sort((a, b) => a - b)
  const middle = sorted[Math.floor(sorted.length / 2)]
  if (middle === undefined) throw new Error('Nothing was measured')
  return middle
}
