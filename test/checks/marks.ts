/**
 * What published descriptions say of animals the key tells apart, in their own words, each beside the mark of ours it
 * stands for. The passages quoted were read in the open copies named, not the whole works; none was written for a keeper with
 * a torch.
 */
import type { KeyMark } from '../../core/index.ts'

export type Described = {
  readonly of: string
  readonly source: string
  readonly says: readonly { readonly text: string; readonly mark: KeyMark }[]
}

export const gnorimosphaeroma: Described = {
  of: 'Gnorimosphaeroma Menzies, 1954 (Sphaeromatidae)',
  source:
    'R. Wetzer, A. Wall & N. L. Bruce, ZooKeys 1037 (2021), 23–56, diagnosis and description of the genus, doi:10.3897/zookeys.1037.63017',
  says: [
    { text: 'Body vaulted', mark: 'domed' },
    { text: 'with ability to conglobate', mark: 'rolls' },
    // The tail in front of the last plate is one piece: its grooves run in from the sides and do not meet.
    { text: 'sutures (except first) long extending from lateral margin, separated medially', mark: 'tailPlates' },
  ],
}
export const sphaeromatidae: Described = {
  of: 'Sphaeromatidae',
  source:
    'R. J. Menzies & W. L. Kruczynski (1983), characters of the family, as quoted on taxondiversity.fieldofscience.com (2015)',
  says: [
    { text: 'second to fifth fused, forming vault with pleotelson', mark: 'tailPlates' },
    { text: 'capable of rolling into a compact ball', mark: 'rolls' },
  ],
}
export const cirolanidae: Described = {
  of: 'Cirolanidae Dana, 1852',
  source: 'Zooplankton of the North Sea, Linnaeus NG of Naturalis, taxon 131484',
  says: [
    { text: 'Pleon with five distinct somites', mark: 'tailRings' },
    { text: 'also feeding on fish and scavenging', mark: 'comesToMeat' },
  ],
}
export const reefCirolanidae: Described = {
  of: 'Cirolanidae of the Great Barrier Reef',
  source:
    'ecologycenter.us, Isopoda: slaters, pill bugs, fish lice (a chapter on coral reefs; its author is not named there)',
  says: [
    { text: 'swim rapidly towards a food source', mark: 'fastStraight' },
    { text: 'such as a dead or maimed fish', mark: 'comesToMeat' },
  ],
}
export const cirolanaSiamensis: Described = {
  of: 'Cirolana siamensis',
  source:
    'E. Rodcharoen, N. L. Bruce & P. Pholpunthin, J. Nat. Hist. 50 (2016), 1935–1981, doi:10.1080/00222933.2016.1180718',
  says: [
    // The other half of the head’s width is eyes. C. bambang, of the same genus, has them 84 % apart (C. M. Sidabalok &
    // N. L. Bruce, Zootaxa 4375, 2018, 441–450): big eyes alone decide nothing, nor does their absence.
    { text: 'Eyes black, separated by about 53% of width of head', mark: 'bigEyes' },
    { text: 'pleonites 3 – 5 posterior margins smooth', mark: 'tailRings' },
  ],
}
export const gnathiidae: Described = {
  of: 'Gnathiidae Harger, 1880',
  source: 'Zooplankton of the North Sea, Linnaeus NG of Naturalis, taxon 131480, after Monod (1926) and Naylor (1972)',
  says: [
    { text: 'pereion somites 3-5 fused and inflated', mark: 'swollenBelly' },
    { text: 'Pranizas are ectoparasitic on fish', mark: 'ridesFish' },
    { text: 'Male with large mandibles, projecting in front of the cephalon', mark: 'bigJaws' },
  ],
}
/** "each with only five pairs of ambulatory pereiopods": the same page on Gnathiidae. Other isopods have seven. */
export const gnathiidWalkingLegs = 5
export const munna: Described = {
  of: 'Munna, in M. minuta Hansen, 1910',
  source:
    'British Myriapod & Isopod Group, Munna minuta, after E. Naylor & A. Brandt, Intertidal Marine Isopods (2015)',
  says: [
    { text: 'the other pairs of legs are long', mark: 'spiderLegs' },
    { text: 'females up to 3 mm, males smaller', mark: 'tinyOnWeed' },
    { text: 'Laminaria holdfasts', mark: 'tinyOnWeed' },
  ],
}
/** Marks of the other animals (copepods, amphipods, shrimps, crabs): common practice, from memory. */
