/**
 * What is this bug? Questions, answers, marks and what to do next. One next step each, and never anything poured into the
 * tank: whatever kills one small crustacean kills the others.
 */
import type { KeyAnswer, KeyFound, KeyMark, KeyQuestion, KeyRefusal, KeyVerdict } from '../../core/index.ts'
import { formName } from './forms.ts'

export const keyWords = {
  title: 'What is this bug?',
  how: 'A hand lens or the phone’s camera is enough. “I cannot tell” is a good answer.',
  back: 'One answer back',
  seen: 'What you saw',
  never: 'Pour nothing into the tank to kill it: what kills one kind kills the copepods too.',
}

export const verdictWords: Readonly<Record<KeyVerdict, string>> = {
  harmless: 'Harmless',
  watch: 'Usually fine: keep an eye on it',
  trap: 'Suspect: keep it apart',
  unsure: 'Not sure, and that is a good answer',
}

const woodlouse = 'Flat like a woodlouse'
export const questionWords: Readonly<Record<KeyQuestion, { readonly asks: string; readonly look?: string }>> = {
  where: { asks: 'Where does it sit?' },
  onFish: {
    asks: 'What does it look like on the fish?',
    look: 'Look at the mouth, the gills and the flanks. Many let go within the hour: a clean fish proves nothing.',
  },
  onCoral: { asks: 'What does it look like on the coral?', look: 'Look at branching stony corals from close by.' },
  shell: {
    asks: 'Is it a tumbling dot with a shell in two halves?',
    look: 'Half a millimetre to two, like a tiny clam.',
  },
  spins: { asks: 'Is it a see-through dot that glides or spins?', look: 'Under 0.4 mm, and no legs.' },
  hops: { asks: 'Does it hop, skate or jerk along?', look: 'Under two millimetres.' },
  sideways: { asks: 'Is it flattened from side to side, or thin as a stick?', look: 'Two millimetres to fifteen.' },
  glassy: { asks: 'Is it a glassy little shrimp that hovers?', look: 'Three millimetres to twenty.' },
  thin: { asks: 'Is it thin as the tip of a pencil, or fat only in front?', look: 'One millimetre to five.' },
  flat: {
    asks: 'Is it flattened from top to bottom, with legs all alike?',
    look: 'Seven pairs of walking legs in most, five in one harmful kind.',
  },
  woodlouseShape: { asks: `${woodlouse}: which shape?` },
  woodlouseMarks: {
    asks: `${woodlouse}: which of these do you see?`,
    look: 'Touch every one you are certain of. Grooves that run in from the sides of the tail and do not meet still make one plate.',
  },
  claws: { asks: 'What about its claws?' },
  crab: { asks: 'A crab: what are its pincers like?' },
}

export const answerWords: Readonly<Record<KeyAnswer, string>> = {
  onFish: 'On a fish',
  onCoral: 'On the flesh of a coral',
  elsewhere: 'Elsewhere, or swimming free',
  hookedRider: 'Flat, holding on with hooked legs',
  swollenRider: 'One to four millimetres, with a swollen belly: pale, greenish or blood red',
  yellowSpecks: 'Yellow specks, each with a red spot',
  clamShell: 'Yes: two halves, and it tumbles',
  spinningDot: 'Yes: it glides or spins, and has no legs',
  teardrop: 'A teardrop with a forked tail that hops or skates, perhaps with bags of eggs',
  pinprick: 'A pinprick under 0.2 mm that goes in jerks',
  curledSideways: 'Flattened from side to side, curled, and skitters along lying on its side',
  stick: 'A stick that clings, and moves in loops',
  glassyShrimp: 'Yes: glassy with eyes on stalks, and it hovers',
  tubeDweller: 'Thin as a pencil’s tip with tiny claws, in a tube',
  fatFront: 'Fat in front with a thin forked tail, and it burrows',
  flatLegsAlike: 'Yes: flat from top to bottom, and the legs are alike',
  spiderLegs: 'Like a spider with long legs, one to three millimetres, on weed or algae',
  longNarrow: 'Long and narrow, holding on lengthways to weed',
  swollenBelly: 'One to four millimetres with a swollen belly',
  bigJaws: 'One to four millimetres with big jaws in front, in a hole in the rock',
  ovalBody: 'Oval, like a woodlouse from the garden',
  hugeClaw: 'One huge claw',
  foldingArms: 'Arms that fold like a spear or a club, eyes on stalks',
  clicksOnly: 'I only hear clicks at night',
  anyCrab: 'It is a crab',
  hairyPincers: 'Hairy, with dark tips',
  smoothPincers: 'Smooth with blunt or spooned tips, and it picks at algae',
  none: 'None of these',
  cannotTell: 'I cannot tell',
}

export const markWords: Readonly<Record<KeyMark, string>> = {
  ridesFish: 'sits on a fish',
  hookedLegs: 'flat, with hooked legs',
  swollenBelly: 'a swollen belly',
  bigJaws: 'big jaws',
  livesOnCoral: 'lives on the flesh of a coral',
  yellowRedSpot: 'yellow with a red spot',
  clamShell: 'a shell in two halves',
  tumbles: 'tumbles',
  spins: 'glides or spins',
  noLegs: 'no legs',
  teardropForkedTail: 'a teardrop with a forked tail',
  hops: 'hops or skates',
  pinprick: 'a pinprick',
  jerks: 'goes in jerks',
  flatSideways: 'flattened from side to side',
  skittersOnSide: 'skitters on its side',
  stickLike: 'thin as a stick',
  loops: 'moves in loops',
  glassyStalkedEyes: 'glassy, with eyes on stalks',
  hovers: 'hovers',
  pencilThin: 'thin as a pencil’s tip',
  tinyClaws: 'tiny claws, in a tube',
  fatFront: 'fat in front',
  thinForkedTail: 'a thin forked tail',
  flatTopToBottom: 'flattened from top to bottom',
  legsAlike: 'legs all alike',
  spiderLegs: 'long legs like a spider’s',
  tinyOnWeed: 'one to three millimetres, on weed or algae',
  longNarrow: 'long and narrow',
  holdsLengthways: 'holds on lengthways to weed',
  tailPlates: 'a tail of one or two plates, with a short fan at its sides',
  slow: 'slow',
  domed: 'a domed back',
  rolls: 'rolls into a ball',
  tailRings: 'a tail of several separate rings before the fan',
  bigEyes: 'big dark eyes that wrap the sides of the head',
  fastStraight: 'swims fast and straight',
  comesToMeat: 'comes to meat or to sleeping fish at night',
  hugeClaw: 'one huge claw',
  foldingArms: 'arms that fold, and eyes on stalks',
  clicks: 'clicks at night',
  hairyPincers: 'hairy pincers with dark tips',
  smoothPincers: 'smooth pincers with blunt tips',
  grazesWeed: 'picks at algae',
}

export type FoundWords = {
  /** In plain words, then the word to look it up by. */
  readonly name: string
  readonly says: string
  readonly next: string
}
const jar = 'Jar it tonight: a clear cup of tank water'
export const foundWords: Readonly<Record<KeyFound, FoundWords>> = {
  fishLouse: {
    name: formName('fishLouse'),
    says: 'It feeds on that fish and does not leave by itself.',
    next: 'Leave it where it is, keep that fish in water of its own, and ask a vet or someone who knows fish.',
  },
  gnathiid: {
    name: formName('gnathiid'),
    says: 'The young ones drink, let go within the hour and hide in the rock.',
    next: 'Set a jar with a bit of meat after dark, and look into it after half an hour and after an hour.',
  },
  coralCopepod: {
    name: formName('coralCopepod'),
    says: 'This kind feeds on the coral it sits on.',
    next: 'Move that coral into a tub of its own, and show it to someone who knows corals.',
  },
  ostracod: { name: formName('ostracod'), says: 'It eats leftovers and film.', next: 'Leave it be.' },
  rotifer: {
    name: formName('rotifer'),
    says: 'Food for corals and for the smallest mouths.',
    next: 'Leave it be.',
  },
  copepod: {
    name: formName('copepod'),
    says: 'This is the small life you feed.',
    next: 'Leave it be, and count it some night.',
  },
  nauplius: {
    name: formName('nauplius'),
    says: 'The small life you feed is breeding.',
    next: 'Leave it be, and count it some night.',
  },
  amphipod: {
    name: formName('amphipod'),
    says: 'It eats leftovers; only a starved one nibbles at polyps.',
    next: 'Leave it be.',
  },
  skeletonAmphipod: {
    name: formName('skeletonAmphipod'),
    says: 'It clings and sifts the water.',
    next: 'Leave it be, and look again in a week whether there are many more.',
  },
  mysid: { name: formName('mysid'), says: 'It hunts the smallest and feeds the fish.', next: 'Leave it be.' },
  tanaid: { name: formName('tanaid'), says: 'It eats leftovers and film.', next: 'Leave it be.' },
  cumacean: {
    name: formName('cumacean'),
    says: 'It lives in the sand and eats leftovers.',
    next: 'Leave it be.',
  },
  munnid: {
    name: formName('munnid'),
    says: 'It looks fierce and grazes algae.',
    next: 'Leave it be.',
  },
  sphaeromatid: {
    name: formName('sphaeromatid'),
    says: 'A slow grazer. Two of its marks were seen, and none of the harmful kind’s.',
    next: 'Leave it be.',
  },
  idoteid: {
    name: formName('idoteid'),
    says: 'It grazes algae, and sometimes a weed you would rather keep.',
    next: 'Leave it be, and look at your favourite weed in a week.',
  },
  cirolanid: {
    name: formName('cirolanid'),
    says: 'At night it comes to meat, and some bite sleeping fish.',
    next: 'Set a jar with a bit of meat tonight after dark, and look into it after half an hour and after an hour.',
  },
  snappingShrimp: {
    name: formName('snappingShrimp'),
    says: 'It digs and clicks, and minds its own business.',
    next: 'Leave it be, and note if a small fish or a snail goes missing.',
  },
  mantisShrimp: {
    name: formName('mantisShrimp'),
    says: 'It spears or smashes fish, snails and crabs.',
    next: 'Find its hole by the clicks and move that rock, with it inside, into a tub of its own: hands off, it strikes.',
  },
  hairyCrab: {
    name: formName('hairyCrab'),
    says: 'Such crabs are suspected of eating polyps, snails and sleeping fish.',
    next: 'Lean a glass with a bit of meat against the rock after dark, and take out what climbs in.',
  },
  smoothCrab: {
    name: formName('smoothCrab'),
    says: 'It picks algae off the rock.',
    next: 'Leave it be, and watch once after dark what it eats.',
  },
  unsureOnFish: {
    name: 'Something on a fish',
    says: 'What it is cannot be told from this.',
    next: 'Photograph the fish from both sides, and ask a vet or someone who knows fish.',
  },
  unsureOnCoral: {
    name: 'Something on a coral',
    says: 'What it is cannot be told from this.',
    next: 'Photograph it from close by, with the coral, and show it to someone who knows corals.',
  },
  unsureWoodlouse: {
    name: 'Of the woodlouse kind, and no more can be told',
    says: 'Too few marks, or marks of both the harmless and the harmful kind.',
    next: `${jar}, a photograph of its tail from above, and the same question again.`,
  },
  unsureClicks: {
    name: 'Something that clicks',
    says: 'The harmless snapping shrimp clicks, and so does the harmful mantis shrimp.',
    next: 'Look for its hole with a dim red torch after dark, and for its claws.',
  },
  unsureCrab: {
    name: 'A crab',
    says: 'The tips of its pincers tell, and they were not seen.',
    next: 'Photograph its pincers after dark, and come back with the picture.',
  },
  unsure: {
    name: 'Not one of these',
    says: 'Or not seen well enough, which is usual.',
    next: `${jar} and a photograph from above, then the same questions again.`,
  },
}

/** Only a draft from an older app, or two touches at once, come to this. */
export const keyRefusalText = (refusal: KeyRefusal): string => {
  switch (refusal.why) {
    case 'notAskedHere':
      return 'That was asked before: the answer stands, and the next question is below.'
    case 'noSuchAnswer':
      return 'That is not one of the answers here. Please touch one of them.'
  }
}
