/** Photos in words: what they show, what is kept of them, and what stands in the way. */
import {
  type Moment,
  type PhotoGroup,
  type PhotoKept,
  type PhotoRefusal,
  type SayRefusal,
  type StrikeRefusal,
  wallDay,
} from '../../core/index.ts'
import type { PicturesInFile, PicturesTaken } from '../state/photoBackup.ts'
import type { NotAPicture } from '../state/readyPicture.ts'
import type { ZipBroken } from '../storage/backupRefusals.ts'
import { dayWords } from './dates.ts'
import { formName } from './forms.ts'
import { seriesTitle } from './life.ts'
import { capital, inWords, number, plural, toDecimals } from './numbers.ts'
import type { Reading } from './reading.ts'
import { type AnyRefusal, refusalText } from './refusals.ts'

export const photosWords = (count: number): string => plural(count, 'photo', 'photos')

/** "Both photos", "all 5 photos": of one thing. */
export const allPhotosWords = (count: number): string => (count === 2 ? 'Both photos' : `All ${photosWords(count)}`)

/** "4.8 MB". A file of any size is some of one. */
export const bytesWords = (bytes: number): string =>
  bytes < 100_000
    ? `${number(Math.max(1, Math.round(bytes / 1_000)))} kB`
    : `${toDecimals(bytes / 1_000_000, bytes < 10_000_000 ? 1 : 0)} MB`

/** Where it stands under others of its kind. */
export const groupTitle = (group: PhotoGroup): string => {
  switch (group.shows) {
    case 'tank':
      return 'The tank'
    case 'pour':
      return 'Pours'
    case 'kind':
      return group.form === undefined ? 'Not recognised' : formName(group.form)
    case 'spot':
      return seriesTitle(group.series)
  }
}

export const takenOn = (at: Moment, { zone, today }: Pick<Reading, 'zone' | 'today'>): string =>
  dayWords(wallDay(at, zone), today)
/** For eyes that do not see it. */
export const photoSays = (fact: PhotoKept, reading: Pick<Reading, 'zone' | 'today'>): string =>
  `Photo of ${takenOn(fact.at, reading)}${fact.words ? `: ${fact.words}` : ''}`
/** Something is wrong with the disk, not with the photo. */
export const unreadableText = 'This phone cannot read the picture just now'
export const notHereText =
  'The picture itself is not on this phone. A backup with photos from the phone that took it brings it.'

/** "92 days lie between them." */
export const betweenWords = (days: number): string =>
  days === 0 ? 'Both of one day.' : `${capital(days === 1 ? 'one day' : `${number(days)} days`)} between them.`

export const keptWords = (count: number): string =>
  count === 1 ? 'The photo is kept.' : `${photosWords(count)} are kept.`
export const noDayText = 'Which day? A day, a month and a year are wanted.'
export const withoutText =
  'There is no room left on this phone for the picture. That there was one is written down; free some space and choose it again.'

export const photoRefusal = (
  refusal: PhotoRefusal | SayRefusal | StrikeRefusal | NotAPicture | AnyRefusal,
  reading: Reading,
): string => {
  switch (refusal.why) {
    case 'notAPicture':
      return 'This browser cannot draw that file. A photo as JPEG or PNG works everywhere.'
    case 'nothingToShow':
      return 'What it shows is not on record any more.'
    case 'photoNotYet':
      return 'That day is still to come.'
    case 'photoThere':
      return 'That photo is kept here already.'
    case 'photoTooLarge':
      return `That photo is ${bytesWords(refusal.bytes)}; more than ${bytesWords(refusal.most)} are not kept.`
    case 'photoWordsTooLong':
      return `Up to ${number(refusal.most)} letters are kept with a photo.`
    default:
      return refusalText(refusal, reading)
  }
}

export const restoreRefusal = (refusal: ZipBroken | AnyRefusal, reading: Reading): string =>
  refusal.why === 'zipBroken'
    ? 'That file was cut short on its way, or is damaged. Fetch it once more from where it was kept.'
    : refusalText(refusal, reading)

/** "The book tells of 12 photos, all on this phone. A backup file by itself leaves them out." */
export const picturesHereText = ({ told, here }: { readonly told: number; readonly here: number }): string => {
  const where =
    here === told
      ? told === 1
        ? 'and it is on this phone'
        : 'all on this phone'
      : here === 0
        ? 'none of them on this phone'
        : `${number(here)} of them on this phone`
  return `The book tells of ${photosWords(told)}, ${where}. The backup file by itself says so and leaves ${told === 1 ? 'it' : 'them'} out.`
}

/** "It tells of 12 photos, and 11 of them are in it." Undefined where it tells of none. */
export const picturesInFileText = ({ told, inside, missing }: PicturesInFile): string | undefined => {
  if (told === 0) return undefined
  const holds =
    inside === 0
      ? `the ${told === 1 ? 'picture is' : 'pictures are'} not in it`
      : inside === told
        ? told === 1
          ? 'and it is in it'
          : 'and all are in it'
        : `and ${number(inside)} of them are in it`
  const news = inside > 0 && missing.length === 0 ? ', all here already' : ''
  return `It tells of ${photosWords(told)}, ${holds}${news}.`
}

export const picturesTakenText = ({ kept, damaged, stopped }: PicturesTaken): string => {
  const all = [`${capital(photosWords(kept))} taken in.`]
  if (damaged > 0)
    all.push(
      `${capital(inWords(damaged))} in the file had changed on the way and ${damaged === 1 ? 'was' : 'were'} left out.`,
    )
  if (stopped)
    all.push(
      stopped.why === 'storageFull'
        ? 'For the others there is no room on this phone: free some space, and take the file in once more.'
        : stopped.why === 'importStopped'
          ? 'The others are still in the file: take it in once more when you like.'
          : 'The others could not be read or kept: take the file in once more.',
    )
  return all.join(' ')
}

/** "The newest 900 of them fit into one file." */
export const fittingText = (count: number): string => `The newest ${number(count)} of them fit into one file.`

export const leftOverText = (count: number): string =>
  `${capital(photosWords(count))} that ${count === 1 ? 'was' : 'were'} crossed out still ${count === 1 ? 'takes' : 'take'} room on this phone.`
export const deletedText = (count: number): string => `${capital(photosWords(count))} deleted from this phone.`
