/** Reminders: what will ring on this phone and what will not, when, and every way there is to be reminded. */
import { Page } from '../../parts/Page.tsx'
import { Section } from '../../parts/Section.tsx'
import { useMatter } from '../../state/device.ts'
import { lookingRound } from '../../state/household.ts'
import { nudgeStanding } from '../../state/nudging.ts'
import { type Channels, closedSentence, lastShownWords, openSentence } from '../../words/channels.ts'
import { madeUpKeepingText } from '../../words/madeUp.ts'
import { useReading } from '../useReading.ts'
import { AlarmLines } from './AlarmLines.tsx'
import { CalendarFile } from './CalendarFile.tsx'
import { Nudges } from './Nudges.tsx'
import { useProbes } from './useProbes.ts'
import { WatchLink } from './WatchLink.tsx'
import { Ways } from './Ways.tsx'
import { WishFields } from './WishFields.tsx'

export const Reminders = () => {
  const reading = useReading()
  const { probes, again } = useProbes()
  const wish = useMatter('nudge')
  const calendar = useMatter('calendar')
  if (lookingRound) return <Page title="Reminders" answer={madeUpKeepingText} />
  const channels: Channels | undefined = probes && { standing: nudgeStanding(wish), probes, calendar }
  return (
    <Page title="Reminders" when="This phone" answer={channels && closedSentence(channels, reading)}>
      <p role="status">{channels && `${openSentence(channels)} ${lastShownWords(channels.probes, reading)}`}</p>
      <Section title="Nudges">
        <Nudges reading={reading} onChanged={again} />
      </Section>
      <Section title="When">
        <WishFields reading={reading} />
      </Section>
      <Section title="Calendar">
        <CalendarFile reading={reading} />
      </Section>
      {channels && (
        <Section title="What can ring here">
          <Ways channels={channels} reading={reading} onTried={again} />
        </Section>
      )}
      <Section title="The evening watch">
        <WatchLink />
      </Section>
      <Section title="By hand">
        <AlarmLines reading={reading} />
      </Section>
      <p>
        <a href="#/phone">Back to this phone</a>
      </p>
    </Page>
  )
}
