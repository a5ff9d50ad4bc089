/** What belongs to this phone: its look, how safe the book is on it, the way out and in as a file, what this app is. */
import { Facts } from '../../parts/Facts.tsx'
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { useMatter } from '../../state/device.ts'
import { lookingRound } from '../../state/household.ts'
import { version } from '../../state/version.ts'
import { madeUpKeepingText, madeUpPhoneText } from '../../words/madeUp.ts'
import { backupDueText, careText, holdsText, licencesText, privacyText, unreadText } from '../../words/phone.ts'
import { LookRound } from '../LookRound.tsx'
import { useReading } from '../useReading.ts'
import { Keeping } from './Keeping.tsx'
import { LookChoice } from './LookChoice.tsx'
import { Nudges } from './Nudges.tsx'
import { Restore } from './Restore.tsx'
import { SaveBackup } from './SaveBackup.tsx'

export const ThisPhone = () => {
  const reading = useReading()
  const { history, unread } = reading.world
  const held = history.all.length + unread.length
  const lastBackup = useMatter('lastBackup')
  const due = backupDueText(held, lastBackup, reading)
  return (
    <Page title="This phone" answer={lookingRound ? madeUpPhoneText : holdsText(held, lastBackup, reading)}>
      {lookingRound ? (
        <p>{madeUpKeepingText}</p>
      ) : (
        <Section title="Backup">
          {due && <p>{due}</p>}
          {held > 0 && <SaveBackup reading={reading} />}
          <Restore />
          {unread.length > 0 && <p>{unreadText(unread.length)}</p>}
        </Section>
      )}
      <Section title="Look">
        <LookChoice reading={reading} />
      </Section>
      {!lookingRound && (
        <>
          <Section title="Kept on this phone">
            <Keeping />
          </Section>
          <Section title="Reminders">
            <Nudges reading={reading} />
          </Section>
          <Section title="Look round">
            <LookRound reading={reading} />
          </Section>
        </>
      )}
      <Section title="About Smallhours">
        <p>{privacyText}</p>
        <p>{careText}</p>
        <p>{licencesText}</p>
        <Facts facts={[{ term: 'Version', fact: version }]} />
      </Section>
    </Page>
  )
}
