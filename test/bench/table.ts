/** What was measured, as a table a person can read. */
export type Bar = {
  readonly bar: string
  readonly measured: number
  readonly limit: number
  readonly unit: 'x' | 'kB'
  /** The two times, or what else stands behind the figure. */
  readonly detail: string
}

export const passes = ({ measured, limit }: Bar): boolean => measured <= limit

const shown = (value: number, unit: Bar['unit']): string => `${value.toFixed(unit === 'x' ? 2 : 1)} ${unit}`

export const table = (bars: readonly Bar[]): string => {
  const rows = [
    ['bar', 'measured', 'limit', '', 'from'],
    ...bars.map((bar) => [
      bar.bar,
      shown(bar.measured, bar.unit),
      shown(bar.limit, bar.unit),
      passes(bar) ? 'pass' : 'OVER',
      bar.detail,
    ]),
  ]
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)))
  return rows.map((row) => row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')).join('\n')
}
