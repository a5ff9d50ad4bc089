/**
 * Volumes of water and what takes its room, each with its source beside it. What was reckoned from geometry alone says so: it
 * guards against a slip of ours and proves nothing about a real tank.
 */
type Value = { readonly expected: number; readonly source: string }

/** Litres: 120 × 50 × 50 cm outside, glass of 10 mm, base of 12 mm, water 3 cm below the rim. */
export const rectangleOutside: Value = {
  expected: 259.4112,
  source: 'derived elsewhere with other code from (120 − 2)(50 − 2)(50 − 1.2 − 3) / 1000: a regression',
}
/** Litres: the same tank sold by its outside. */
export const rectangleGross: Value = { expected: 300, source: '120 × 50 × 50 / 1000' }
/** Litres: 50 cm across, 60 cm of water. */
export const cylinder: Value = {
  expected: 117.8097,
  source: 'derived elsewhere with other code from πr²h: a regression',
}
/** Litres that are no water in 30 kg of rock at 2.0 kg to the litre. */
export const thirtyKilogramsOfRock: Value = {
  expected: 15,
  source: 'mass over apparent density; the density is common practice (1.5 to 2.5), from memory, no source',
}
/** Shares of wet-packed sand that are water, by how well it is sorted. */
export const waterInSand: { readonly mostSorted: Value; readonly leastSorted: Value } = {
  mostSorted: {
    expected: 0.424,
    source:
      'Beard and Weyl 1973, Influence of texture on porosity and permeability, AAPG Bulletin 57:349–369, abstract',
  },
  leastSorted: { expected: 0.279, source: 'the same, very poorly sorted' },
}
/** US gallons in 259.4112 L. */
export const rectangleInUsGallons: Value = {
  expected: 259.4112 / 3.785411784,
  source: 'NIST Handbook 44, Appendix C: 1 gal = 231 in³ exactly = 3.785411784 L',
}
