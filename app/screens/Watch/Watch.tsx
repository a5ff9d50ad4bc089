/** The evening watch: a dark screen that stays on, the clock of the tank, and a call when it is time. */
import './watch.css'
import { useEffect, useState } from 'react'
import { nextNudge, tanksDue } from '../../../core/index.ts'
import { Button, ButtonLink, LinkButton } from '../../parts/Actions.tsx'
import { Dock } from '../../parts/BigAct.tsx'
import { Page } from '../../parts/Page.tsx'
import { wishesOf } from '../../reminders/asked.ts'
import { useMatter } from '../../state/device.ts'
import { buzz } from '../../state/haptic.ts'
import { phoneZone } from '../../state/phoneZone.ts'
import { useScreenLock } from '../../state/screenLock.ts'
import { clock } from '../../words/dates.ts'
import { timeForWords, watchingWords } from '../../words/watch.ts'
import { KeepAwake } from '../KeepAwake.tsx'
import { useReading } from '../useReading.ts'

const none: ReadonlySet<string> = new Set()
/** Kept by this screen alone, which is why it is offered here and nowhere else. */
const snoozeMinutes = 30

export const Watch = () => {
  const { world, now, zone } = useReading()
  const wishes = wishesOf(useMatter('wishes'), phoneZone())
  const [snoozedUntil, setSnoozedUntil] = useState(0)
  const screen = useScreenLock()
  const due = now < snoozedUntil ? [] : tanksDue(world, now, wishes)
  const calling = due.length > 0
  useEffect(() => {
    if (!calling) return
    buzz()
    const again = setInterval(buzz, 20_000)
    return () => clearInterval(again)
  }, [calling])
  const next = nextNudge(world, now, { shown: none, wishes })
  const [first] = due
  return (
    <Page
      title="Evening watch"
      answer={
        calling
          ? timeForWords(due)
          : now < snoozedUntil
            ? `Quiet until ${clock(snoozedUntil as typeof now, zone)}.`
            : watchingWords(next, now)
      }
      dock={
        first && (
          <Dock>
            <ButtonLink href={`#/tank/${first.tank}`}>To tonight’s dose</ButtonLink>
            <Button kind="quiet" onAct={() => setSnoozedUntil(now + snoozeMinutes * 60_000)}>
              Again in {snoozeMinutes} minutes
            </Button>
          </Dock>
        )
      }
    >
      <p className="watch-clock">
        <span className="for-ears">The time at the tank: </span>
        {clock(now, zone)}
      </p>
      <KeepAwake {...screen} />
      <LinkButton onAct={() => window.history.back()}>Leave the watch</LinkButton>
    </Page>
  )
}
