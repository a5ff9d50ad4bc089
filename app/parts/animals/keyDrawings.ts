/** Which drawing stands beside which answer, mark and animal of the key. What is not here is told in words alone. */
import type { KeyAnimal, KeyAnswer, KeyMark } from '../../../core/index.ts'
import type { AnimalId } from './Animal.tsx'

export const animalDrawing: Readonly<Record<KeyAnimal, AnimalId>> = {
  fishLouse: 'fishLouse',
  gnathiid: 'gnathiid',
  coralCopepod: 'coralCopepod',
  ostracod: 'ostracod',
  rotifer: 'rotifer',
  copepod: 'copepod',
  nauplius: 'nauplius',
  amphipod: 'amphipod',
  skeletonAmphipod: 'skeletonAmphipod',
  mysid: 'mysid',
  tanaid: 'tanaid',
  cumacean: 'cumacean',
  munnid: 'munnid',
  sphaeromatid: 'sphaeromatid',
  idoteid: 'idoteid',
  cirolanid: 'cirolanid',
  snappingShrimp: 'snappingShrimp',
  mantisShrimp: 'mantisShrimp',
  hairyCrab: 'hairyPincers',
  smoothCrab: 'smoothPincers',
}
export const answerDrawing: Readonly<Partial<Record<KeyAnswer, AnimalId>>> = {
  hookedRider: 'fishLouse',
  swollenRider: 'gnathiid',
  yellowSpecks: 'coralCopepod',
  clamShell: 'ostracod',
  spinningDot: 'rotifer',
  teardrop: 'copepod',
  pinprick: 'nauplius',
  curledSideways: 'amphipod',
  stick: 'skeletonAmphipod',
  glassyShrimp: 'mysid',
  tubeDweller: 'tanaid',
  fatFront: 'cumacean',
  flatLegsAlike: 'woodlouse',
  spiderLegs: 'munnid',
  longNarrow: 'idoteid',
  swollenBelly: 'gnathiid',
  bigJaws: 'bigJaws',
  // Neither of the two it may be: the tail decides.
  ovalBody: 'woodlouse',
  hugeClaw: 'snappingShrimp',
  foldingArms: 'mantisShrimp',
  anyCrab: 'crab',
  hairyPincers: 'hairyPincers',
  smoothPincers: 'smoothPincers',
}
export const markDrawing: Readonly<Partial<Record<KeyMark, AnimalId>>> = {
  tailPlates: 'tailPlates',
  domed: 'domed',
  rolls: 'rolledUp',
  tailRings: 'tailRings',
  bigEyes: 'bigEyes',
}
