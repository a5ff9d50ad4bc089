/** The smallest: copepods and their young, rotifers, seed shrimps, and the copepods that live on corals. */
import { around, both, type Drawing, dot, fringe, oval, path } from './pen.ts'

/** From above: teardrop, long feelers, one eye, egg bags beside a forked tail. */
export const copepod: Drawing = {
  line:
    'M48 9C58 9 62.5 19 61.5 30C60.5 42 55.5 51 51.5 57H44.5C40.5 51 35.5 42 34.5 30C33.5 19 38 9 48 9Z' +
    'M44.8 57L45.8 75H50.2L51.2 57' +
    both((x) => `M${x(-2.4)} 75L${x(-5)} 83`) +
    both((x) => `M${x(5)} 12Q${x(24)} 8 ${x(38)} 26`) +
    oval(37.5, 67, 5, 9.5, 16) +
    oval(58.5, 67, 5, 9.5, -16),
  fine:
    'M35.6 38Q48 43 60.4 38M38.2 46Q48 50.5 57.8 46M41.4 52.4Q48 55.5 54.6 52.4M45.2 63H50.8M45.5 69H50.5' +
    both((x) => `M${x(-5)} 83L${x(-12)} 91M${x(-5)} 83L${x(-7)} 94M${x(-5)} 83L${x(-2.5)} 92`) +
    both(
      (x) => `M${x(17)} 10.8L${x(18)} 5M${x(26)} 14.6L${x(29)} 9.4M${x(33)} 19.6L${x(37)} 16M${x(38)} 26L${x(43)} 30`,
    ) +
    both((x) => dot(x(10.6), 62, 1.5) + dot(x(9.2), 68, 1.5) + dot(x(12), 72, 1.5)),
  dark: dot(48, 16, 2.2),
}

/** From above: a rounded speck with one eye and three pairs of bristly oars. */
export const nauplius: Drawing = {
  line:
    'M48 26C60 26 65 36 63 47C61 59 54 68 48 71C42 68 35 59 33 47C31 36 36 26 48 26Z' +
    both((x) => `M${x(11)} 31Q${x(22)} 22 ${x(33)} 22`) +
    both((x) => `M${x(15)} 42Q${x(24)} 40 ${x(30)} 43L${x(39)} 38M${x(30)} 43L${x(38)} 51`) +
    both((x) => `M${x(13.5)} 53Q${x(22)} 56 ${x(27)} 63L${x(35)} 64M${x(27)} 63L${x(28)} 72`),
  fine:
    both((x) => `M${x(33)} 22L${x(41)} 17M${x(33)} 22L${x(42)} 24M${x(26)} 22.6L${x(28)} 16`) +
    both((x) => `M${x(39)} 38L${x(45)} 33M${x(39)} 38L${x(46)} 40M${x(38)} 51L${x(45)} 51M${x(38)} 51L${x(42)} 58`) +
    both((x) => `M${x(35)} 64L${x(41)} 61M${x(35)} 64L${x(40)} 69M${x(28)} 72L${x(25)} 79M${x(28)} 72L${x(33)} 78`) +
    both((x) => `M${x(-3)} 69L${x(-5)} 80`) +
    'M41 44Q48 50 55 44V52Q48 58 41 52Z',
  dark: dot(48, 33, 2.4),
}

/** From the front: a glass vase with a crown of hairs, a foot, and one egg carried along. */
export const rotifer: Drawing = {
  line:
    'M33 33C28 50 32 66 42 71H54C64 66 68 50 63 33L59 27L55 32L51 27L48 31L45 27L41 32L37 27Z' +
    'M45 71C44 78 49 82 47 90M51 71C51 77 55 82 51 90' +
    oval(68, 75, 6.5, 9, -24),
  fine:
    fringe([48, 46], [232, 308], [21, 29], 13) +
    oval(48, 48, 6, 5) +
    'M42 56Q48 64 54 56M47 90L44 94M49 91V95M51 90L54 94M57 69L62 72',
  dark: dot(48, 38, 2),
}

/** From the side: two halves of a shell, gaping below, feelers and feet between them. */
export const ostracod: Drawing = {
  line:
    'M17 47C17 30 34 20 54 22C72 24 82 37 79 50C76 61 62 63 46 62C28 61 17 58 17 47Z' +
    'M18.5 54C26 70 64 74 78.5 54.5' +
    'M22 61Q14 66 10 76M28 65.5Q22 72 20 82M66 67Q72 74 72 82',
  fine:
    'M10 76L5 77M10 76L7 82M12.5 70L7 70M20 82L15 84M20 82L21 87M72 82L68 87M72 82L76 86' +
    'M25 47C26 36 38 28 53 29.5C65 31 73 38 72 47' +
    dot(54, 46, 1.6) +
    dot(59, 43.5, 1.6) +
    dot(58.5, 49, 1.6) +
    dot(63, 47, 1.6),
  dark: dot(34, 37, 2.6),
}

const speck = (x: number, y: number, tilt: number): string => oval(x, y, 3.6, 2.3, tilt)
/** A branch of stony coral with specks on it, and one of them under the lens: humped, with a spot. */
export const coralCopepod: Drawing = {
  line:
    'M24 92V62L11 45Q9 38 15 38L27 50L28 24Q32 18 36 24V52L46 42Q52 41 51 47L38 64V92' +
    dot(70, 30, 20) +
    'M58 34C59 22 70 18 77 25C81 30 80 37 76 39C70 42 60 41 58 34Z',
  fine:
    speck(31.5, 34, 80) +
    speck(19, 46, 40) +
    speck(43, 50, -50) +
    speck(30, 62, 70) +
    speck(33, 79, 100) +
    speck(28, 71, 20) +
    'M64 23L63 40M70 20.6V41M76 24L75.5 39.6M58 31L52 27M58 34L52 36M62 41L60 46M67 41.5L66 46.5M72 41L73 46' +
    path(around(70, 30, 20, 150), [46, 47]),
  dark:
    dot(31.8, 35.4, 1) +
    dot(20.2, 47, 1) +
    dot(42, 51, 1) +
    dot(30.4, 63.4, 1) +
    dot(32.8, 80.4, 1) +
    dot(29.4, 71.4, 1) +
    dot(73, 31, 3.4),
}
