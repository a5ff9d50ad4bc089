/**
 * What is this bug? Questions in order, what each answer leads to, and the marks each animal is known by. A hand lens or a
 * phone is enough. Which marks tell, and which animals harm: common practice; those that tell the harmless from the harmful
 * woodlouse kind are checked against published descriptions in the tests.
 */

export type KeyVerdict = 'harmless' | 'watch' | 'trap' | 'unsure'

/** The one question where marks are ticked; every other has one answer. */
export type TickQuestion = 'woodlouseMarks'
export type ChoiceQuestion =
  | 'where'
  | 'onFish'
  | 'onCoral'
  | 'shell'
  | 'spins'
  | 'hops'
  | 'sideways'
  | 'glassy'
  | 'thin'
  | 'flat'
  | 'woodlouseShape'
  | 'claws'
  | 'crab'
export type KeyQuestion = ChoiceQuestion | TickQuestion

export type KeyAnswer =
  | 'onFish'
  | 'onCoral'
  | 'elsewhere'
  | 'hookedRider'
  | 'swollenRider'
  | 'yellowSpecks'
  | 'clamShell'
  | 'spinningDot'
  | 'teardrop'
  | 'pinprick'
  | 'curledSideways'
  | 'stick'
  | 'glassyShrimp'
  | 'tubeDweller'
  | 'fatFront'
  | 'flatLegsAlike'
  | 'spiderLegs'
  | 'longNarrow'
  | 'swollenBelly'
  | 'bigJaws'
  | 'ovalBody'
  | 'hugeClaw'
  | 'foldingArms'
  | 'clicksOnly'
  | 'anyCrab'
  | 'hairyPincers'
  | 'smoothPincers'
  | 'none'
  | 'cannotTell'

export type KeyMark =
  | 'ridesFish'
  | 'hookedLegs'
  | 'swollenBelly'
  | 'bigJaws'
  | 'livesOnCoral'
  | 'yellowRedSpot'
  | 'clamShell'
  | 'tumbles'
  | 'spins'
  | 'noLegs'
  | 'teardropForkedTail'
  | 'hops'
  | 'pinprick'
  | 'jerks'
  | 'flatSideways'
  | 'skittersOnSide'
  | 'stickLike'
  | 'loops'
  | 'glassyStalkedEyes'
  | 'hovers'
  | 'pencilThin'
  | 'tinyClaws'
  | 'fatFront'
  | 'thinForkedTail'
  | 'flatTopToBottom'
  | 'legsAlike'
  | 'spiderLegs'
  | 'tinyOnWeed'
  | 'longNarrow'
  | 'holdsLengthways'
  | 'tailPlates'
  | 'slow'
  | 'domed'
  | 'rolls'
  | 'tailRings'
  | 'bigEyes'
  | 'fastStraight'
  | 'comesToMeat'
  | 'hugeClaw'
  | 'foldingArms'
  | 'clicks'
  | 'hairyPincers'
  | 'smoothPincers'
  | 'grazesWeed'

export type KeyAnimal =
  | 'fishLouse'
  | 'gnathiid'
  | 'coralCopepod'
  | 'ostracod'
  | 'rotifer'
  | 'copepod'
  | 'nauplius'
  | 'amphipod'
  | 'skeletonAmphipod'
  | 'mysid'
  | 'tanaid'
  | 'cumacean'
  | 'munnid'
  | 'sphaeromatid'
  | 'idoteid'
  | 'cirolanid'
  | 'snappingShrimp'
  | 'mantisShrimp'
  | 'hairyCrab'
  | 'smoothCrab'

/** Not told yet, and where it was left: each has another next step. */
export type KeyUnsure = 'unsureOnFish' | 'unsureOnCoral' | 'unsureWoodlouse' | 'unsureClicks' | 'unsureCrab' | 'unsure'
export type KeyFound = KeyAnimal | KeyUnsure

type Known = { readonly verdict: Exclude<KeyVerdict, 'unsure'>; readonly marks: readonly KeyMark[] }
export const keyAnimals: Readonly<Record<KeyAnimal, Known>> = {
  fishLouse: { verdict: 'trap', marks: ['ridesFish', 'hookedLegs'] },
  gnathiid: { verdict: 'trap', marks: ['ridesFish', 'swollenBelly', 'bigJaws'] },
  coralCopepod: { verdict: 'trap', marks: ['livesOnCoral', 'yellowRedSpot'] },
  ostracod: { verdict: 'harmless', marks: ['clamShell', 'tumbles'] },
  rotifer: { verdict: 'harmless', marks: ['spins', 'noLegs'] },
  copepod: { verdict: 'harmless', marks: ['teardropForkedTail', 'hops'] },
  nauplius: { verdict: 'harmless', marks: ['pinprick', 'jerks'] },
  amphipod: { verdict: 'harmless', marks: ['flatSideways', 'skittersOnSide'] },
  skeletonAmphipod: { verdict: 'watch', marks: ['stickLike', 'loops'] },
  mysid: { verdict: 'harmless', marks: ['glassyStalkedEyes', 'hovers'] },
  tanaid: { verdict: 'harmless', marks: ['pencilThin', 'tinyClaws'] },
  cumacean: { verdict: 'harmless', marks: ['fatFront', 'thinForkedTail'] },
  munnid: { verdict: 'harmless', marks: ['spiderLegs', 'tinyOnWeed'] },
  sphaeromatid: { verdict: 'harmless', marks: ['tailPlates', 'slow', 'domed', 'rolls'] },
  idoteid: { verdict: 'watch', marks: ['longNarrow', 'holdsLengthways'] },
  cirolanid: { verdict: 'trap', marks: ['tailRings', 'bigEyes', 'fastStraight', 'comesToMeat'] },
  snappingShrimp: { verdict: 'watch', marks: ['hugeClaw', 'clicks'] },
  mantisShrimp: { verdict: 'trap', marks: ['foldingArms', 'clicks'] },
  hairyCrab: { verdict: 'trap', marks: ['hairyPincers'] },
  smoothCrab: { verdict: 'watch', marks: ['smoothPincers', 'grazesWeed'] },
}

export type KeyLead = { readonly ask: KeyQuestion } | { readonly found: KeyFound }
/** Its words name every mark it stands for: who gives the answer has seen them all. */
export type KeyChoice = { readonly marks: readonly KeyMark[]; readonly to: KeyLead }

const seen = (...marks: readonly KeyMark[]) => ({
  ask: (ask: KeyQuestion): KeyChoice => ({ marks, to: { ask } }),
  found: (found: KeyFound): KeyChoice => ({ marks, to: { found } }),
})
const on = (ask: KeyQuestion) => ({ none: seen().ask(ask), cannotTell: seen().ask(ask) })

export const firstQuestion: KeyQuestion = 'where'
export const keyChoices: Readonly<Record<ChoiceQuestion, Readonly<Partial<Record<KeyAnswer, KeyChoice>>>>> = {
  where: {
    onFish: seen('ridesFish').ask('onFish'),
    onCoral: seen('livesOnCoral').ask('onCoral'),
    elsewhere: seen().ask('shell'),
  },
  onFish: {
    hookedRider: seen('hookedLegs').found('fishLouse'),
    swollenRider: seen('swollenBelly').found('gnathiid'),
    none: seen().found('unsureOnFish'),
    cannotTell: seen().found('unsureOnFish'),
  },
  onCoral: {
    yellowSpecks: seen('yellowRedSpot').found('coralCopepod'),
    // Much that is harmless walks over coral.
    none: seen().ask('shell'),
    cannotTell: seen().found('unsureOnCoral'),
  },
  shell: { clamShell: seen('clamShell', 'tumbles').found('ostracod'), ...on('spins') },
  spins: { spinningDot: seen('spins', 'noLegs').found('rotifer'), ...on('hops') },
  hops: {
    teardrop: seen('teardropForkedTail', 'hops').found('copepod'),
    pinprick: seen('pinprick', 'jerks').found('nauplius'),
    ...on('sideways'),
  },
  sideways: {
    curledSideways: seen('flatSideways', 'skittersOnSide').found('amphipod'),
    stick: seen('stickLike', 'loops').found('skeletonAmphipod'),
    ...on('glassy'),
  },
  glassy: { glassyShrimp: seen('glassyStalkedEyes', 'hovers').found('mysid'), ...on('thin') },
  thin: {
    tubeDweller: seen('pencilThin', 'tinyClaws').found('tanaid'),
    fatFront: seen('fatFront', 'thinForkedTail').found('cumacean'),
    ...on('flat'),
  },
  flat: { flatLegsAlike: seen('flatTopToBottom', 'legsAlike').ask('woodlouseShape'), ...on('claws') },
  woodlouseShape: {
    spiderLegs: seen('spiderLegs', 'tinyOnWeed').found('munnid'),
    longNarrow: seen('longNarrow', 'holdsLengthways').found('idoteid'),
    swollenBelly: seen('swollenBelly').found('gnathiid'),
    bigJaws: seen('bigJaws').found('gnathiid'),
    ovalBody: seen().ask('woodlouseMarks'),
    ...on('woodlouseMarks'),
  },
  claws: {
    hugeClaw: seen('hugeClaw').found('snappingShrimp'),
    foldingArms: seen('foldingArms').found('mantisShrimp'),
    // Both click: alone it tells nothing.
    clicksOnly: seen('clicks').found('unsureClicks'),
    anyCrab: seen().ask('crab'),
    none: seen().found('unsure'),
    cannotTell: seen().found('unsure'),
  },
  crab: {
    hairyPincers: seen('hairyPincers').found('hairyCrab'),
    smoothPincers: seen('smoothPincers', 'grazesWeed').found('smoothCrab'),
    none: seen().found('unsureCrab'),
    cannotTell: seen().found('unsureCrab'),
  },
}
