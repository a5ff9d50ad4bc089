/** The forms of the key by name, apart from the key itself: the diary names what it once came to. */
import type { KeyAnimal } from '../../core/index.ts'
import { capital } from './numbers.ts'

/** In plain words, and in brackets the word to look it up by. */
const forms: Readonly<Record<KeyAnimal, string>> = {
  fishLouse: 'a louse that lives on fish (cymothoid)',
  gnathiid: 'a blood-sucker that visits fish at night (gnathiid)',
  coralCopepod: 'a copepod that lives on stony corals (Tegastes)',
  ostracod: 'a seed shrimp (ostracod)',
  rotifer: 'a wheel animal (rotifer)',
  copepod: 'a copepod',
  nauplius: 'a newly hatched copepod (nauplius)',
  amphipod: 'a sand-hopper of the sea (amphipod)',
  skeletonAmphipod: 'a skeleton shrimp (caprellid)',
  mysid: 'an opossum shrimp (mysid)',
  tanaid: 'a tube-dweller (tanaid)',
  cumacean: 'a comma shrimp (cumacean)',
  munnid: 'a spider-legged grazer (munnid)',
  sphaeromatid: 'a sea pill bug (sphaeromatid)',
  idoteid: 'a weed-holder (idoteid)',
  cirolanid: 'a fish-biter (cirolanid kind)',
  snappingShrimp: 'a snapping shrimp',
  mantisShrimp: 'a mantis shrimp',
  hairyCrab: 'a crab with hairy, dark-tipped pincers',
  smoothCrab: 'a crab with smooth, blunt pincers',
}

/** A form a newer version knows goes by its own name. */
export const formName = (form: string): string => capital(Object.hasOwn(forms, form) ? forms[form as KeyAnimal] : form)
