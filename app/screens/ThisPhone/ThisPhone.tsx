/** What belongs to this phone: its name and look, how safe the book is on it, the way out and in as a file, what this app is. */
import { backupOverdue } from '../../../core/index.ts'
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
import { LeftOver } from './LeftOver.tsx'
import { LookChoice } from './LookChoice.tsx'
import { Newest } from './Newest.tsx'
import { PhoneName } from './PhoneName.tsx'
import { RemindersDoor } from './RemindersDoor.tsx'
import { Restore } from './Restore.tsx'
import { SaveBackup } from './SaveBackup.tsx'
import { SaveWithPhotos } from './SaveWithPhotos.tsx'
import { WroteIt } from './WroteIt.tsx'

export const ThisPhone = () => {
  const reading = useReading()
  const { history, unread } = reading.world
  const held = history.all.length + unread.length
  const lastBackup = useMatter('lastBackup')
  const due = backupDueText(held, lastBackup, backupOverdue(reading.world, lastBackup, reading))
  return (
    <Page title="This phone" answer={lookingRound ? madeUpPhoneText : holdsText(held, lastBackup, reading)}>
      {/* Not before there is a book: a name alone would make a phone that is to be restored look lived in. */}
      {!lookingRound && held > 0 && (
        <Section title="Its name">
          <PhoneName reading={reading} />
        </Section>
      )}
      <Section title="Look">
        <LookChoice reading={reading} />
      </Section>
      {lookingRound ? (
        <p>{madeUpKeepingText}</p>
      ) : (
        <>
          <Section title="Reminders">
            <RemindersDoor reading={reading} />
          </Section>
          <Section title="Kept on this phone">
            <Keeping />
          </Section>
          <Section title="Backup">
            {due && <p>{due}</p>}
            {held > 0 && <SaveBackup reading={reading} />}
            <SaveWithPhotos reading={reading} />
            <Restore />
            {/* Where no photo was ever told of there are no pictures to look for. */}
            {history.all.some(({ fact }) => fact.kind === 'photoKept') && <LeftOver />}
            <WroteIt reading={reading} />
          </Section>
          {unread.length > 0 && (
            <Section title="From a newer version">
              <p>{unreadText(unread.length)}</p>
              <Newest />
            </Section>
          )}
          <Section title="Look round">
            <LookRound reading={reading} />
          </Section>
        </>
      )}
      <Section title="About Smallhours">
        <p>{privacyText}</p>
        <p>{careText}</p>
        <Facts facts={[{ term: 'Version', fact: version }]} />
        {!lookingRound && unread.length === 0 && <Newest />}
        <p>{licencesText}</p>
      </Section>
    </Page>
  )
}
