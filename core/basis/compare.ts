/** Plain order of characters, the same on every phone. Texts in a language are sorted where they are shown. */
export const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
