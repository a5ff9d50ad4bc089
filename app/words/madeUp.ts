/** What the made-up household is called, and how the app says that it is made up. All of it is invented. */
export const names = {
  tank: 'Long Gallery',
  food: 'Green food',
  fridge: 'kitchen fridge',
  freezer: 'kitchen freezer',
  olderBag: 'tray bag 1',
  newerBag: 'tray bag 2',
  note: 'Copepods on the front glass, more than last week.',
} as const

export const lookRoundText = 'Look round with made-up data'
export const madeUpBarText = 'Made-up data: the marine lab of Gannet Steps school.'
export const leaveMadeUpText = 'Leave it'
export const madeUpPhoneText = 'Everything here is made up, and nothing of it stays when you leave it.'
export const madeUpKeepingText =
  'Your own book lies untouched meanwhile. Backups, promises from the browser and reminders are for your own book: they wait until you leave this one.'
export const lookRoundHint =
  'Some weeks of a school’s marine lab, to try everything on. It has a book of its own: yours is not touched, and nothing of it stays when you leave it.'
