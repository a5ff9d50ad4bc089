/** All that is fetched only when it is wanted. */
export { Holding } from './Holding.tsx'
export { Lamps } from './Lamps.tsx'
export { Otherwise } from './Otherwise.tsx'
export { Overfed } from './Overfed.tsx'
export { PastFood } from './PastFood.tsx'
export { Refused } from './Refused.tsx'
export { Unlogged } from './Unlogged.tsx'
