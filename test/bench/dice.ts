/** Dice that fall the same way every time: two runs measure the same household. */
export type Dice = {
  /** From 0 up to 1. */
  readonly roll: () => number
  /** True so many times in a hundred. */
  readonly percent: (share: number) => boolean
  /** A whole number from `least` to `most`. */
  readonly between: (least: number, most: number) => number
}

/** A linear congruential generator with the constants of Numerical Recipes: enough for a made-up household. */
export const diceFrom = (seed: number): Dice => {
  let state = seed >>> 0
  const roll = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
  return {
    roll,
    percent: (share) => roll() * 100 < share,
    between: (least, most) => least + Math.floor(roll() * (most - least + 1)),
  }
}
