/**
 * Whose book this tab keeps: hers, or a made-up one to look round in. Settled as the page opens, before anything is opened;
 * only a reload changes it. The mark belongs to the tab, so that another tab is always the real app.
 */
import { type Databases, madeUp, real } from '../storage/madeUp.ts'

const mark = 'smallhours-madeup'

const marked = (): boolean => {
  try {
    return sessionStorage.getItem(mark) !== null
  } catch {
    // Forbidden: then it cannot have been set.
    return false
  }
}

export const lookingRound: boolean = marked()
export const household: Databases = lookingRound ? madeUp : real

let left = false
/** Nothing more is to be kept of the made-up household: the page has not gone yet, but it has been left. */
export const hasLeft = (): boolean => left

/** From the next reload on. Throws where the tab may keep nothing. */
export const markTab = () => sessionStorage.setItem(mark, 'here')
export const unmarkTab = () => {
  left = true
  sessionStorage.removeItem(mark)
}
