/** Entries of one name that say two things. The phone's own stays; both are shown, so that she can judge. */
import { type Held, isUnread } from '../../../core/index.ts'
import { Line, Lines } from '../../parts/Lines.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import type { BackupPreview } from '../../state/restoring.ts'
import { dayClock } from '../../words/diary.ts'
import { entryText } from '../../words/entries.ts'
import { number } from '../../words/numbers.ts'
import type { Reading } from '../useReading.ts'

type ClashesProps = { readonly clashes: BackupPreview['clashes']; readonly reading: Reading }

/** So many that the file is some other mishap, and reading them all would not help. */
const most = 20

export const Clashes = ({ clashes, reading }: ClashesProps) => {
  if (clashes.length === 0) return null
  const says = (held: Held): string =>
    isUnread(held)
      ? 'an entry of a newer version'
      : `${entryText(held.fact, reading.world, reading.now, reading)} (${dayClock(held.fact.at, reading)})`
  return (
    <MoreExact label="What disagrees">
      <Lines>
        {clashes.slice(0, most).map(({ ours, theirs }) => (
          <Line key={ours.id}>
            <p>Here: {says(ours)}</p>
            <p>In the file: {says(theirs)}</p>
          </Line>
        ))}
      </Lines>
      {clashes.length > most && <p>And {number(clashes.length - most)} more.</p>}
    </MoreExact>
  )
}
