/** Single marks of the woodlouse kinds, drawn large: what tells the harmless from the harmful. */
import { both, type Drawing, dot, plates } from './pen.ts'

/** Two plates: grooves run in from the sides and do not meet. A short fan lies at each side. */
export const tailPlates: Drawing = {
  line:
    plates(
      [
        [6, 34],
        [18, 34],
      ],
      8,
    ) +
    'M16 19L15.4 36Q48 47 80.6 36L80 19' +
    'M15.4 36C15 62 32 83 48 84C64 83 81 62 80.6 36' +
    both((x) => `M${x(32.4)} 38C${x(43)} 48 ${x(44)} 68 ${x(33)} 80C${x(29)} 77 ${x(26)} 73 ${x(24)} 70`),
  fine: both(
    (x) =>
      `M${x(32.4)} 25Q${x(24)} 28.6 ${x(16)} 30M${x(32.6)} 31Q${x(26)} 34 ${x(19)} 35.4M${x(34)} 12Q${x(20)} 16 ${x(8)} 17`,
  ),
}

/** Five separate rings right across, then a pointed plate with a wide fan. */
export const tailRings: Drawing = {
  line:
    plates(
      [
        [4, 30],
        [12, 30],
      ],
      6,
    ) +
    plates(
      [
        [12, 25],
        [19.4, 26],
        [26.8, 26],
        [34.2, 25.4],
        [41.6, 24.4],
        [49, 23],
      ],
      5,
      1.4,
    ) +
    'M24.6 50Q28 74 48 86Q68 74 71.4 50' +
    both((x) => `M${x(23.6)} 52C${x(38)} 56 ${x(46)} 70 ${x(43)} 86C${x(31)} 86 ${x(22)} 81 ${x(17)} 75`),
  fine:
    both((x) => `M${x(22.6)} 60L${x(38)} 79`) +
    both(
      (x) =>
        `M${x(43)} 86L${x(44)} 92M${x(36)} 85.4L${x(36.6)} 91M${x(29)} 83L${x(28.6)} 89M${x(12)} 80.4L${x(13.6)} 87M${x(5)} 84L${x(6)} 91`,
    ),
}

/** The head from above: dark eyes wrap its sides. */
export const bigEyes: Drawing = {
  line:
    'M18 58C18 30 32 20 48 20C64 20 78 30 78 58Q48 72 18 58Z' +
    plates(
      [
        [58, 33],
        [76, 38],
        [90, 40],
      ],
      10,
    ),
  fine:
    both((x) => `M${x(8)} 21Q${x(16)} 6 ${x(32)} 8`) +
    both((x) => `M${x(18)} 25C${x(13)} 36 ${x(15)} 56 ${x(20)} 64.4`) +
    both((x) => `M${x(14)} 24Q${x(34)} 14 ${x(44)} 34`) +
    'M34 62Q48 66 62 62',
  // Facets, not a filled eye: at night that would shine.
  dark: both((x) =>
    [28, 33, 38, 43, 48, 53, 58]
      .flatMap((down, row) =>
        [17.4, 21, 24.6, 28].slice(0, [2, 3, 3, 3, 4, 4, 4][row]).map((out) => dot(x(out + row * 0.15), down, 1.3)),
      )
      .join(''),
  ),
}

const hump = 'M8 66C10 38 30 24 50 24C72 24 86 42 88 66'
/** From the side: a dome like half an egg. */
export const domed: Drawing = {
  line: `${hump}Q48 74 8 66ZM26 70L22 80M38 71.6L36 82M50 72L50 82M62 71.6L65 82`,
  fine: 'M24 34Q17 50 20 68M35 27.4Q30 48 32 70M46 24.2Q43 48 44 71M57 24.6Q57 48 56 71.4M67 29Q71 50 69 70.6M8 62L3 52M9 59L6 46M4 86H92',
  dark: dot(15, 58, 1.8),
}

/** Rolled up: plates all round, nothing sticks out. */
export const rolledUp: Drawing = {
  line: 'M14 48C14 28 28 14 48 14C68 14 82 28 82 48C82 68 68 82 48 82C28 82 14 68 14 48Z',
  fine:
    'M48 82C40 70 38 62 44 54M48 82C56 72 66 64 72 62M44 54Q58 48 72 62M44 54C34 48 24 50 15 54M44 54C38 42 28 36 18 33' +
    'M45 53C44 38 38 26 30 19M46.6 53C50 38 50 26 47 14M50 52.6C58 40 63 30 63 18M54 52.8C64 46 72 40 77 31M60 54C68 52 76 50 82 47',
}
