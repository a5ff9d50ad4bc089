/** Shrimp-like and stick-like: seen from the side with the head left, but for the tube-dweller. */
import { around, at, both, type Drawing, dot, oval, path, plates, rod } from './pen.ts'

const curl = [50, 54] as const
const back = (turn: number, far: number) => around(curl[0], curl[1], far, turn)
/** The bent back of a sand-hopper: plates around a centre, narrower towards the tail. */
const ring = (from: number, to: number, deep: number): string => {
  const [a, b, c, d] = [back(from, 33), back(to, 33), back(to, 33 - deep), back(from, 33 - deep)]
  return `M${at(...a)}A33 33 0 0 1 ${at(...b)}L${at(...c)}L${at(...d)}Z`
}
const rings = [15, 16.5, 17.5, 18, 18, 17.5, 16.5, 15, 13.5, 12, 10, 8, 6]
const start = 190
const step = 15.5

/** Flattened from side to side and curled, lying on its side. */
export const amphipod: Drawing = {
  line:
    rings.map((deep, n) => ring(start + n * step, start + (n + 1) * step, deep)).join('') +
    `M${at(...back(190, 33))}C10 60 12 70 20 70C27 70 32 64 ${at(...back(190, 18))}` +
    'M16 64Q8 70 4 84M19 68Q15 78 16 90' +
    'M34 58L30 67L36 71Q41 70 40 65M39 53L37 62L43 66Q48 64 46 60',
  fine:
    'M46 51L50 62L45 72L48 77M52 51L57 62L53 73L56 78M58 53L66 62L64 73L68 78M62 56L73 64L73 76L77 80M64 60L76 67L79 77L83 79' +
    path(back(385, 27), back(392, 18)) +
    path(back(389, 30), back(400, 24)) +
    path(back(391, 33), back(402, 33)),
  dark: oval(23, 62, 2, 3, 20),
}

const chain = [
  [25, 80],
  [30, 66],
  [40, 55],
  [52, 46],
  [62, 34],
  [66, 22],
] as const
/** Thin as a stick, holding on to weed with its hind legs, arms folded to strike. */
export const skeletonAmphipod: Drawing = {
  line:
    chain
      .slice(1)
      .map((to, n) => rod(chain[n] ?? to, to, [2.2, 2.6, 3, 3, 2.6][n] ?? 2))
      .join('') +
    oval(66, 17, 5, 4.4, -20) +
    'M62 14Q46 8 32 14M63 20Q52 20 42 27' +
    'M64.6 28L54 30L50 38L45 34M60 38L71 44Q78 50 74 58Q70 52 66 51L72 45' +
    'M25 80L17 76L13 82M25 80L19 84L16 90M26 76L17 70L12 73',
  fine:
    'M32 14L22 18M42 27L36 33M47 48.6Q44 58 49 60Q52 57 50 47.4M38 56.6Q36 64 40 67Q44 63 41 54.6' +
    'M9 94C13 86 15 80 12 68Q10 60 14 50M14 84Q22 90 30 89M12.6 71Q5 68 3 62',
  dark: dot(64, 16, 1.5),
}

/** Glassy, with eyes on stalks, feathery legs, and a round balance stone on each side of the tail. */
export const mysid: Drawing = {
  line:
    'M22 40C30 34 44 34 52 37V53C42 56 28 54 23 49C20 46 20 42 22 40Z' +
    'M52 38.4L59 40V52.4L52 53M59 40.4L66 43V53.6L59 52.4M66 43.4L72 47V56L66 53.6M72 47.4L77.4 52V59.4L72 56M77.4 52.4L82 58V63.4L77.4 59.4' +
    'M82 58L93 66Q90 70 82 63.4M81 62.4L88 75Q83 76 78.6 61' +
    'M24 39L18 36' +
    'M22 46L6 47Q9 51 23 49.4',
  fine:
    dot(84.6, 62.2, 1.7) +
    'M22 43Q10 36 3 22M21 42Q8 42 2 32M22 50Q12 56 4 68' +
    'M28 53.6Q24 60 28 68L25 72M33 55Q29 62 33 71L30 75M38 55.4Q34 63 38 73L35 77M43 55.2Q40 63 44 73L41 77M48 54.4Q46 62 50 71L47 75' +
    'M28 60L33 64M33 62L38 67M38 64L43 68M44 63L49 67' +
    'M56 53L55 57M63 53.4L62 57.6M69 55.4L68 59' +
    'M44 36V55.4',
  dark: dot(15.6, 34.6, 3.6),
}

/** From above: thin as a pencil’s tip, two little claws in front, half out of its tube. */
export const tanaid: Drawing = {
  line:
    'M43 20C43 14 53 14 53 20L54 30Q48 32.6 42 30Z' +
    plates(
      [
        [31, 5.4],
        [37, 5.8],
        [43.5, 6],
        [50.5, 6],
        [57, 5.8],
      ],
      1.6,
      0.5,
    ) +
    both(
      (x) =>
        `M${x(5.4)} 24L${x(11)} 19L${x(10)} 12Q${x(10)} 6 ${x(5)} 5L${x(6)} 10L${x(8)} 12M${x(10)} 12Q${x(7)} 13 ${x(4)} 11`,
    ) +
    both((x) => `M${x(14)} 58C${x(10)} 68 ${x(13)} 82 ${x(10)} 93`) +
    'M34 58Q48 66 62 58Q48 51.4 34 58',
  fine:
    both((x) => `M${x(1.6)} 15.4L${x(3)} 5`) +
    both(
      (x) =>
        `M${x(6)} 35L${x(14)} 31L${x(17)} 34M${x(6.4)} 41L${x(15)} 40L${x(18)} 44M${x(6.4)} 48L${x(14)} 49L${x(17)} 53`,
    ) +
    'M38 68Q48 73 58 68M37 77Q48 82 59 77M38 86Q48 91 58 86',
  dark: both((x) => dot(x(3.6), 19.4, 1.1)),
}

/** Fat in front, with a thin jointed tail that ends in a long fork. */
export const cumacean: Drawing = {
  line:
    'M12 50L17 44C24 33 40 30 48 38C52 44 51 54 46 60C38 68 24 66 16 58Z' +
    'M49.6 41L55 42.4Q57.6 49 54 56.4L48.6 57M55 43.6L60.4 45Q62.2 50 59.6 55.2L54.6 55.4M60.4 46.2L65 47.4Q66.2 50.6 64.4 54L60 54' +
    rod([67, 50], [71.6, 46.6], 2.4) +
    rod([72.4, 45.6], [76, 41], 2.3) +
    rod([76.6, 40], [79, 34.6], 2.2) +
    rod([79.2, 33.4], [80, 27.6], 2.1) +
    rod([80.2, 26.4], [79.8, 20.6], 2),
  fine:
    'M79 18.6L73 7M80.6 18.4L82 5M73 7L70 3M82 5V1' +
    'M20 45Q30 52 44 43M12 50L7 47M13 52L7 53' +
    'M24 63.6Q18 70 20 78L16 82M31 65.4Q26 73 29 81L26 86M38 64.4Q36 73 40 80L38 86M50 57Q51 66 57 71L57 77M56 56Q59 63 65 66L67 71',
  dark: dot(22.6, 42.6, 1.8),
}

/** One claw as large as the rest of the front. */
export const snappingShrimp: Drawing = {
  line:
    'M34 44C42 37 56 37 62 41V58C54 62 42 61 36 57C33 53 32 48 34 44Z' +
    'M62 42L69 43Q72 51 69 59L62 58M69 44L76 47Q78 54 74 61L69 58.6M76 48.4L82 53Q82 60 77 66L74 60.6M82 54.6L86 61Q84 67 79 71L77 65.4M86 62.4L87 69Q84 73 80 75L79 70.6' +
    'M87 69L93 76Q88 82 84 74M83 74L84 84Q77 84 80 75' +
    'M37 55L32 60' +
    'M32 62C33 51 26 42 16 42C12 42 9 44 8 47L13 54L2 61C4 70 15 75 23 72C29 70 31.4 67 32 62Z' +
    'M16 42C9 35 1 41 1 51L8 47' +
    'M37 60L32 70L24 72L18 69M24 72L19 75',
  fine:
    'M34 45Q24 30 8 22M35 43Q30 28 18 14M34 47L29 45M44 40V60' +
    'M44 61L42 72L46 82M49 61.4L49 73L54 82M54 61L56 72L62 80M58 60L63 70L70 77' +
    'M66 59V64M72 61V66M77 66L75 70',
  dark: dot(38.6, 45, 1.7),
}

/** Eyes on stalks, and arms folded under the chest like a jack-knife. */
export const mantisShrimp: Drawing = {
  line:
    'M24 41C30 37 40 37 45 40V53C38 56 28 55 24 51Z' +
    'M45 41L51 41V54L45 53M51 41L57 41.4V55L51 54M57 41.4L64 42V56L57 55M64 42L71 43V57L64 56M71 43L77 44.4V58L71 57M77 44.4L83 46.4V58.6L77 58' +
    'M83 46L93 49L91 53L94 56L90 59L83 59' +
    'M84 59L91 66L86 69L80 58.6' +
    'M25 42L18 35M28 39.6L25 31' +
    rod([35, 57], [17, 51], 3.6) +
    rod([15, 57], [32, 70], 4) +
    'M34 75C26 80 14 82 4 78C8 76 12 75.4 15 75.6C22 75.6 28 74 32 72',
  fine:
    'M10 76L7 70M15 75.6L12.6 68.6M20 75.2L18.4 68.4M25 74.4L24 69' +
    'M20 36Q10 28 3 14M24 33Q19 24 17 10M23 45L8 46Q10 42 22 42' +
    'M38 55L38 64L42 70M42 54.4L44 63L49 69M47 54L50 63L55 68' +
    'M54 55V62L57 63M60 56V63L63 64M67 57V64L70 65M74 58V64L77 65' +
    'M30 39V54M45 47.6H83',
  dark: oval(16, 33, 3, 4.4, 45) + oval(24.2, 27.6, 2.8, 4.2, 15),
}
