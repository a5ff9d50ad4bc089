/** A figure of the book put into a field, so that it reads back as itself. */

/** Three decimals could be thousands, and would be asked about: 94.635 stands as 94.6350. */
export const asTyped = (value: number): string => {
  const text = String(value)
  return /^[1-9]\d{0,2}\.\d{3}$/.test(text) ? `${text}0` : text
}
