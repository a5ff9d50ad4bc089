/** Live bottles at the door: written down, opened, warmed, and a night chosen. */
import { parcelsWaiting } from '../../../core/index.ts'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Page } from '../../parts/Page.tsx'
import { ArrivalForm } from './ArrivalForm.tsx'
import type { OfTank } from './ofTank.ts'
import { Parcel } from './Parcel.tsx'

export const Arrival = ({ tank, reading }: OfTank) => {
  const { world, now } = reading
  const [latest, ...others] = parcelsWaiting(world, now)
  if (!latest)
    return (
      <Page
        title="Bottles at the door"
        when={tank.name}
        answer="Write them down, then open them at once: they need air."
      >
        <ArrivalForm tank={tank} reading={reading} />
      </Page>
    )
  const opened = world.uncapped.has(latest.parcel)
  return (
    <Page
      title="Bottles at the door"
      when={tank.name}
      answer={
        opened
          ? 'Open. Let them come to the warmth of the room by themselves, out of the sun and off any heater.'
          : 'Open them now: they need air. A cold bottle holds sleepy animals, not dead ones.'
      }
    >
      {[latest, ...others].map((parcel) => (
        <Parcel key={parcel.parcel} parcel={parcel} tank={tank} reading={reading} />
      ))}
      <MoreExact label="More bottles have come">
        <ArrivalForm tank={tank} reading={reading} />
      </MoreExact>
    </Page>
  )
}
