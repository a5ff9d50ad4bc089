/** What a backup file can be refused for by the phone itself. Apart from the code that needs a page, for the words' sake. */
export type NotHandedOver = { readonly why: 'notHandedOver' }
export type FileTooLarge = { readonly why: 'fileTooLarge'; readonly bytes: number; readonly most: number }
export type FileUnreadable = { readonly why: 'fileUnreadable' }
/** Cut short on its way, or not a zip at all but for its first letters. */
export type ZipBroken = { readonly why: 'zipBroken' }
