/**
 * Small exact drawings of the animals of the key and of single marks, in the pen of the text beside them. The words beside
 * a drawing say all it shows: it is hidden from those who hear the page.
 */
import './animal.css'
import { crab, hairyPincers, smoothPincers } from './crabs.ts'
import type { Drawing } from './pen.ts'
import { amphipod, cumacean, mantisShrimp, mysid, skeletonAmphipod, snappingShrimp, tanaid } from './shrimps.ts'
import { copepod, coralCopepod, nauplius, ostracod, rotifer } from './smallest.ts'
import { bigEyes, domed, rolledUp, tailPlates, tailRings } from './tails.ts'
import { bigJaws, cirolanid, fishLouse, gnathiid, idoteid, munnid, sphaeromatid, woodlouse } from './woodlice.ts'

const drawings = {
  copepod,
  nauplius,
  rotifer,
  ostracod,
  amphipod,
  skeletonAmphipod,
  mysid,
  tanaid,
  cumacean,
  woodlouse,
  munnid,
  sphaeromatid,
  idoteid,
  cirolanid,
  gnathiid,
  bigJaws,
  fishLouse,
  snappingShrimp,
  mantisShrimp,
  crab,
  hairyPincers,
  smoothPincers,
  coralCopepod,
  tailPlates,
  tailRings,
  bigEyes,
  domed,
  rolledUp,
} satisfies Record<string, Drawing>
export type AnimalId = keyof typeof drawings
export const animalIds = Object.keys(drawings) as AnimalId[]

export const Animal = ({ of, size = 'beside' }: { readonly of: AnimalId; readonly size?: 'beside' | 'large' }) => {
  const { line, fine, dark }: Drawing = drawings[of]
  return (
    <svg className="animal" data-size={size} viewBox="0 0 96 96" aria-hidden="true">
      <path className="animal-line" d={line} />
      {fine && <path className="animal-fine" d={fine} />}
      {dark && <path className="animal-dark" d={dark} />}
    </svg>
  )
}
