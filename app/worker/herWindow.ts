/** Which open window a touched nudge brings to the front: one that keeps her own book, never one that looks round. */
import { madeUpAddress } from '../storage/madeUp.ts'

/** The browser tells a window's address as it was when the page was loaded; rooms change only what follows the hash. */
export const herWindow = <Window extends { readonly url: string }>(windows: readonly Window[]): Window | undefined =>
  windows.find(({ url }) => new URL(url).search !== madeUpAddress)
