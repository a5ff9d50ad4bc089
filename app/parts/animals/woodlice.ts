/** Flat from top to bottom: the woodlouse kinds, from above with the head up. */
import { both, type Drawing, dot, oval, plates } from './pen.ts'

/** Pairs of legs bent backwards, from so far out at each height. */
const legs = (from: readonly (readonly [down: number, out: number])[], reach: number, back: number): string =>
  from
    .map(([down, out]) =>
      both((x) => `M${x(out)} ${down}L${x(out + reach)} ${down - back * 0.2}L${x(out + reach * 1.35)} ${down + back}`),
    )
    .join('')

/** Any of the kind: seven plates, legs alike, and a tail still to be looked at. */
export const woodlouse: Drawing = {
  line:
    'M37 19C38 11 58 11 59 19Q48 23.6 37 19Z' +
    plates(
      [
        [19, 12.4],
        [26, 17.6],
        [32, 19.6],
        [38, 20.4],
        [44, 20.4],
        [50, 20],
        [56, 19],
        [61.5, 17.6],
      ],
      4,
    ) +
    legs(
      [
        [24, 17],
        [29.6, 19.6],
        [35.4, 21],
        [41.2, 21.4],
        [47.2, 21.2],
        [53.2, 20.4],
        [59, 19],
      ],
      7,
      5,
    ),
  fine:
    both((x) => `M${x(5)} 13.4Q${x(12)} 5 ${x(22)} 9`) +
    both((x) => `M${x(17)} 66V70M${x(16)} 75L${x(14.6)} 79M${x(12)} 83.4L${x(9)} 86.4M${x(4.6)} 89L${x(1.4)} 89.6`),
}

/** Domed, with a tail of two plates and a short fan at its sides; small eyes. */
export const sphaeromatid: Drawing = {
  line:
    'M36 20C38 12 58 12 60 20Q48 25 36 20Z' +
    plates(
      [
        [20, 13],
        [27, 19],
        [33, 21.5],
        [39, 23],
        [45, 23.5],
        [51, 23.5],
        [57, 23],
        [62.5, 21.5],
      ],
      5,
    ) +
    plates(
      [
        [62.5, 21.4],
        [69, 21.4],
      ],
      4.5,
    ) +
    'M25.8 69.5C25.5 80 35 89 48 90C61 89 70.5 80 70.2 69.5' +
    both((x) => `M${x(22.4)} 71C${x(28)} 76 ${x(28)} 85 ${x(21)} 89C${x(19)} 87.6 ${x(17.4)} 86.4 ${x(16)} 85`),
  fine:
    both((x) => `M${x(6)} 14.6Q${x(14)} 8 ${x(20)} 14`) +
    both((x) => `M${x(4)} 14Q${x(8)} 6 ${x(15)} 5`) +
    both((x) => `M${x(22)} 65.4Q${x(14)} 68 ${x(9)} 68.6`) +
    legs(
      [
        [30, 21],
        [42, 24],
        [54, 24],
      ],
      3,
      4,
    ),
  dark: both((x) => dot(x(10), 18.2, 1.5)),
}

/** Smooth and bullet-shaped, with big wrap-round eyes, five separate rings, and a wide fan. */
export const cirolanid: Drawing = {
  line:
    'M37 17C38 8 58 8 59 17Q48 22 37 17Z' +
    plates(
      [
        [17, 12],
        [24.5, 15.5],
        [30, 16.6],
        [35.5, 17.2],
        [41, 17.4],
        [46.5, 17.2],
        [52, 16.6],
        [57.5, 15.6],
      ],
      3.4,
      0.5,
    ) +
    plates(
      [
        [57.5, 13.5],
        [60.8, 14],
        [64, 13.8],
        [67.2, 13.4],
        [70.4, 12.8],
        [73.6, 12],
      ],
      2.2,
      0.6,
    ) +
    'M36 74Q38 86 48 92Q58 86 60 74' +
    both((x) => `M${x(12)} 75C${x(20)} 77 ${x(24)} 84 ${x(22)} 91C${x(15)} 91 ${x(10)} 88 ${x(8)} 86`),
  fine:
    both((x) => `M${x(5)} 11Q${x(22)} 10 ${x(28)} 34`) +
    both((x) => `M${x(4)} 10.4Q${x(10)} 4 ${x(17)} 7`) +
    both((x) => `M${x(11.6)} 80L${x(20)} 88`) +
    both(
      (x) => `M${x(22)} 91L${x(23)} 94M${x(18)} 90.6L${x(18.4)} 94M${x(14)} 89L${x(13.6)} 93M${x(4)} 89.4L${x(5)} 94`,
    ) +
    legs(
      [
        [28, 17],
        [39, 18],
        [50, 17.6],
      ],
      4,
      5,
    ),
  dark: both(
    (x) => `M${x(11)} 17.6C${x(11.4)} 13 ${x(9.4)} 10.6 ${x(7)} 9.6C${x(5.4)} 12.6 ${x(6.4)} 17.6 ${x(8)} 19Z`,
  ),
}

/** Long and narrow with one long tail plate, lying along a blade of weed. */
export const idoteid: Drawing = {
  line:
    'M40 15C40 9 56 9 56 15Q48 18 40 15Z' +
    plates(
      [
        [15, 8.4],
        [21.5, 10.2],
        [28, 10.8],
        [34.5, 11],
        [41, 11],
        [47.5, 10.8],
        [54, 10.4],
        [59, 9.8],
      ],
      2,
      0.8,
    ) +
    'M38.4 60L39 82Q44 84 48 91Q52 84 57 82L57.6 60',
  fine:
    both((x) => `M${x(4)} 10.6Q${x(10)} 2 ${x(20)} 5`) +
    both((x) => `M${x(2.4)} 10.4L${x(4)} 5`) +
    'M38.6 64H43M57.4 64H53M38.6 67.6H43M57.4 67.6H53' +
    legs(
      [
        [24, 11.4],
        [31, 12],
        [38, 12],
        [44.5, 12],
        [51, 11.6],
        [57, 11],
      ],
      4,
      4,
    ) +
    'M24 94C20 70 26 40 20 6M76 94C72 66 78 34 72 6',
  dark: both((x) => dot(x(7.2), 13.6, 1.4)),
}

/** A small pear of a body on long spider’s legs; eyes at the sides; feelers longer than itself. */
export const munnid: Drawing = {
  line:
    'M40 32C40 27 56 27 56 32L60 35Q59 39 55 39H41Q37 39 36 35Z' +
    plates(
      [
        [39, 8.5],
        [43, 10.4],
        [47, 10.6],
        [51, 9.6],
        [54.4, 7.8],
        [57.4, 6.6],
        [60, 5.8],
      ],
      1.6,
    ) +
    'M42 60.6C39 67 43 74 48 76C53 74 57 67 54 60.6' +
    both((x) => `M${x(10.6)} 42L${x(26)} 27L${x(38)} 34L${x(40)} 41`) +
    both((x) => `M${x(11.4)} 46L${x(29)} 41L${x(41)} 52L${x(42)} 59`) +
    both((x) => `M${x(10.6)} 50L${x(28)} 54L${x(38)} 68L${x(38)} 75`) +
    both((x) => `M${x(8.4)} 54.6L${x(23)} 63L${x(30)} 79L${x(29)} 86`) +
    both((x) => `M${x(6.8)} 58L${x(16)} 70L${x(20)} 86L${x(18)} 92`) +
    both((x) => `M${x(4)} 28.6L${x(9)} 17L${x(22)} 8`),
  fine:
    both((x) => `M${x(22)} 8Q${x(33)} 4 ${x(42)} 12`) +
    both((x) => `M${x(2)} 28L${x(3)} 20`) +
    'M46 76L45 80M50 76L51 80',
  dark: both((x) => dot(x(10.6), 34.8, 1.7)),
}

/** The young one, full of blood: small head, balloon of a belly, thin tail, five pairs of legs. */
export const gnathiid: Drawing = {
  line:
    'M41 18L48 7L55 18C56 23 53 26 48 26C43 26 40 23 41 18Z' +
    'M41.6 25.4C39 28 38 30 38.4 32.6H57.6C58 30 57 28 54.4 25.4' +
    'M38.4 32.6C24 40 24 62 40.4 68H55.6C72 62 72 40 57.6 32.6' +
    plates(
      [
        [68, 6.8],
        [71.2, 6.4],
        [74.4, 6],
        [77.6, 5.6],
        [80.8, 5.2],
        [83.6, 4.8],
      ],
      1.4,
      0.6,
    ) +
    'M43 84L48 93L53 84' +
    both((x) => `M${x(4.8)} 84.4L${x(11)} 87L${x(9)} 93L${x(3)} 88`),
  fine:
    'M39 29.4H57M31 44Q48 50 65 44M31 57Q48 63 65 57' +
    both((x) => `M${x(3)} 12.6L${x(12)} 8M${x(5)} 15L${x(15)} 14`) +
    both((x) => `M${x(9)} 28L${x(19)} 22L${x(24)} 26`) +
    both((x) => `M${x(9.4)} 31L${x(22)} 28L${x(27)} 33`) +
    both((x) => `M${x(16)} 39L${x(27)} 37L${x(31)} 43`) +
    both((x) => `M${x(19.4)} 50L${x(29)} 51L${x(32)} 58`) +
    both((x) => `M${x(17)} 59L${x(26)} 64L${x(27)} 71`),
  dark: both((x) => oval(x(6), 20, 1.8, 2.8)),
}

/** The grown male: a square head with jaws like pincers. */
export const bigJaws: Drawing = {
  line:
    'M33 32H63C66 40 64 50 60 54H36C32 50 30 40 33 32Z' +
    both((x) => `M${x(6)} 32C${x(18)} 28 ${x(20)} 14 ${x(6)} 5C${x(10)} 14 ${x(9)} 20 ${x(3)} 24L${x(2)} 32`) +
    plates(
      [
        [54, 13],
        [60, 15],
        [67, 15],
        [74, 13],
      ],
      1.6,
    ) +
    plates(
      [
        [74, 7.5],
        [77.4, 7.2],
        [80.8, 6.8],
        [84, 6.4],
      ],
      1.4,
      0.6,
    ) +
    'M42 84.6L48 93L54 84.6',
  fine:
    both((x) => `M${x(11)} 32L${x(24)} 26L${x(30)} 28M${x(14)} 33L${x(27)} 33`) +
    'M48 34V42' +
    legs(
      [
        [57, 15],
        [64, 16.4],
        [71, 15.4],
      ],
      8,
      8,
    ),
  dark: both((x) => dot(x(14), 40, 2)),
}

/** A leg that ends in a sickle, turned back towards the body. */
const hook = (down: number, out: number): string =>
  both(
    (x) =>
      `M${x(out)} ${down}L${x(out + 7)} ${down - 4}M${x(out + 6)} ${down - 0.6}L${x(out + 7)} ${down - 4}` +
      `Q${x(out + 16)} ${down - 4} ${x(out + 12)} ${down + 5.6}Q${x(out + 11)} ${down} ${x(out + 6)} ${down - 0.6}`,
  )
/** Broad and flat, with hooked legs all along and a wide tail plate. */
export const fishLouse: Drawing = {
  line:
    'M41 14C42 8 54 8 55 14L53 18H43Z' +
    plates(
      [
        [17, 8],
        [24, 15],
        [31, 19],
        [38, 20.6],
        [45, 20.6],
        [52, 19],
        [58, 16],
        [63, 13],
      ],
      3,
      1,
    ) +
    plates(
      [
        [63, 11],
        [66, 13.4],
        [69, 13.8],
        [72, 13.6],
      ],
      1.6,
      0.6,
    ) +
    'M33.8 73C31 84 38 91 48 91C58 91 65 84 62.2 73' +
    [24, 33, 42, 51, 60].map((down, n) => hook(down, [15, 19.8, 21.6, 20.6, 16][n] ?? 0)).join(''),
  fine:
    both((x) => `M${x(4)} 9.6L${x(10)} 5M${x(6)} 11.6L${x(13)} 9.6`) +
    both((x) => `M${x(14)} 75L${x(20)} 82L${x(18)} 88`),
  dark: both((x) => dot(x(4.6), 13.4, 1.3)),
}
