/** What this phone says of itself: what it holds, how safe that is, and what a backup file would bring. */
import { type DeviceId, isUnread, type Moment, wallDay } from '../../core/index.ts'
import type { HandedOver } from '../state/handOver.ts'
import type { BackupPreview } from '../state/restoring.ts'
import type { Status } from '../state/store.ts'
import type { LookedForUpdate } from '../state/updates.ts'
import type { Look, Persistence } from '../storage/device.ts'
import type { Imported } from '../storage/importing.ts'
import { dayWords } from './dates.ts'
import { number, plural } from './numbers.ts'
import { type Phones, phoneWords } from './phones.ts'
import type { Reading } from './reading.ts'

const entries = (count: number): string => plural(count, 'entry', 'entries')
const are = (count: number): string => (count === 1 ? '1 is' : `${count === 0 ? 'none' : number(count)} are`)

export const looks: readonly { readonly value: Look; readonly label: string; readonly hint: string }[] = [
  { value: 'byItself', label: 'By itself', hint: 'Red on black on Tonight when the lights are out, paper elsewhere.' },
  { value: 'day', label: 'Always day', hint: 'Paper and ink.' },
  { value: 'night', label: 'Always night', hint: 'Red on black everywhere.' },
]

export const holdsText = (held: number, lastBackup: Moment | undefined, reading: Reading): string =>
  held === 0
    ? 'Nothing is on record here yet. If another phone has the book, take in its backup below.'
    : `This phone holds ${entries(held)}. ${lastBackupText(lastBackup, reading)}`

const lastBackupText = (last: Moment | undefined, { today, zone }: Reading): string =>
  last === undefined ? 'No backup has been saved from it yet.' : `Last backup: ${dayWords(wallDay(last, zone), today)}.`

/** A quiet word, never an alarm; undefined where there is nothing to say. */
export const backupDueText = (held: number, last: Moment | undefined, overdue: boolean): string | undefined => {
  if (held === 0) return undefined
  if (last === undefined) return 'A lost or broken phone takes its book with it; a backup file kept elsewhere does not.'
  return overdue ? 'That is more than a month ago: a good day for a new one.' : undefined
}
/** For ears, beside the room's name. */
export const backupMark = 'no backup for more than a month'
export const calendarMark = 'the nights in your calendar end soon'

export const handedOverText = ({ how, name }: HandedOver): string =>
  how === 'shared'
    ? `${name} was handed to the app you chose. Look once whether it is there.`
    : `${name} is among this phone’s downloads. Keep a copy somewhere else.`

export const persistenceText = (answer: Persistence | undefined): string => {
  switch (answer) {
    case undefined:
      return 'The browser has not been asked yet whether it will keep what is here. It is asked by itself once there is food on record.'
    case 'kept':
      return 'The browser has promised not to clear what is here when room runs short. A lost phone, or clearing the browser’s data by hand, still takes it: only a backup file outlasts that.'
    case 'mayBeCleared':
      return 'The browser made no promise: when room runs short it may clear everything here. Putting Smallhours on the home screen and asking again often helps; a backup file always does.'
    case 'cannotTell':
      return 'This browser does not say whether it keeps what is here. Save a backup file now and then.'
  }
}

export const unreadText = (count: number): string =>
  count === 1
    ? 'One entry was written by a newer Smallhours. It is kept and goes into every backup, but this version cannot read it.'
    : `${entries(count)} were written by a newer Smallhours. They are kept and go into every backup, but this version cannot read them.`

/** "This file holds 1,204 entries, written on 3 March by another phone. 14 are new here, 1,190 are here already." */
export const previewText = (
  { file, added, already, clashes }: Pick<BackupPreview, 'file' | 'added' | 'already' | 'clashes'>,
  phones: Phones,
  { today, zone }: Reading,
): string => {
  const { at, device } = file.header
  const known = phoneWords(device, phones)
  const who = known === 'another phone' ? (nameInside(file.entries, device) ?? known) : known
  const parts = [
    `${are(added.length)} new here`,
    `${are(already)} here already`,
    ...(file.unread > 0 ? [`${are(file.unread)} of a newer version`] : []),
    clashes.length === 0
      ? 'none disagree'
      : `${number(clashes.length)} ${clashes.length === 1 ? 'disagrees' : 'disagree'}`,
  ]
  return `This file holds ${entries(file.entries.length)}, written on ${dayWords(wallDay(at, zone), today)} by ${who}. ${parts.join(', ')}.`
}

/** A phone that knows nothing yet learns from the file what the other is called. */
const nameInside = (entries: BackupPreview['file']['entries'], device: DeviceId): string | undefined => {
  const named = entries.findLast(
    (entry) => !isUnread(entry) && entry.fact.kind === 'phoneNamed' && entry.fact.device === device,
  )
  return named && !isUnread(named) && named.fact.kind === 'phoneNamed' ? named.fact.name : undefined
}

export const takenInText = ({ added, already, clashes }: Imported): string => {
  const news = added === 0 ? 'Nothing in it was new' : `Taken in: ${entries(added)}`
  const kept =
    clashes.length === 0
      ? ''
      : ` ${number(clashes.length)} said something else; kept as this phone has it, and asked about.`
  return `${news}; ${number(already)} ${already === 1 ? 'was' : 'were'} here already.${kept}`
}

export const privacyText =
  'What you note stays on this phone. Nothing is sent anywhere, nobody counts your visits, and there is no account. It leaves only as a backup file you save yourself.'
export const licencesText =
  'Smallhours is free under the MIT licence. Built on React, date-fns, valibot, fflate and Workbox (MIT licence), idb (ISC licence) and wouter (Unlicense).'
export const careText = 'Smallhours keeps a diary; it does not give veterinary or medical advice.'

/** What stands in the way of the book as a whole; undefined while all is well. */
export const troubleText = (status: Status): string | undefined => {
  switch (status) {
    case 'opening':
    case 'ready':
      return undefined
    case 'blocked':
      return 'Smallhours is open in another window that has not made way for this version. Close that window, then reload this one.'
    case 'closedForUpdate':
      return 'A newer Smallhours is open in another window. What you typed is kept; reload this one to go on.'
    case 'storageFull':
      return 'This phone has no room left, so the book could not be opened. Free some space, then reload.'
    case 'storageFailed':
      return 'This phone could not open the book. Nothing in it was changed; reload to try again.'
  }
}

/** Offered as they are; anything else is typed. */
export const phoneNameOptions = ['kitchen phone', 'my phone', 'the lab’s phone', 'tablet'].map((name) => ({
  value: name,
  label: name,
}))
export const calledText = (name: string | undefined): string =>
  name === undefined
    ? 'This phone has no name yet. In another phone’s diary it stands as “another phone”.'
    : `This phone is called “${name}”, in every phone’s diary.`
export const sameNameText = 'Another phone is called so too; their entries would look alike.'

export const wroteItText = (name: string | undefined): string =>
  name === undefined
    ? 'Did this phone write the file, before it was emptied or replaced? Then its entries are this phone’s own.'
    : `The file was written by “${name}”. Is that this phone?`
export const wroteItLabel = (name: string | undefined): string =>
  name === undefined ? 'Yes, this phone wrote it' : `This phone goes on as “${name}”`

export const updateText = (looked: LookedForUpdate): string => {
  switch (looked) {
    case 'coming':
      return 'There is a newer version. It is offered at the top of the page once it is here.'
    case 'newest':
      return 'This is the newest version there is.'
    case 'noNetwork':
      return 'That needs a network, and there is none just now.'
    case 'cannot':
      return 'This browser fetches the newest version by itself whenever the page is opened with a network.'
  }
}
