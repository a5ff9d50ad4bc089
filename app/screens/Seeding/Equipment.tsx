/** What runs on a tank, which of it stops for a pour, and where live bottles may go. The steps of the night are made from it. */
import { useLocation } from 'wouter'
import {
  type DeviceSort,
  describeEquipment,
  deviceSorts,
  type EquipmentDescribed,
  equipmentAt,
  usualDevices,
  usuallyStops,
  type WaterPlace,
} from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Form } from '../../parts/Form.tsx'
import { Page } from '../../parts/Page.tsx'
import { Picks } from '../../parts/Picks.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { deviceOption, placeOptions } from '../../words/seeding.ts'
import { Unfinished } from '../Unfinished.tsx'
import type { OfTank } from './ofTank.ts'
import { placed, useSeeding } from './useSeeding.ts'
import { WholeForm } from './WholeForm.tsx'

type Fields = {
  readonly devices: readonly DeviceSort[]
  /** Of a device she has not got as well: it is ticked beforehand should she get one. */
  readonly stops: readonly DeviceSort[]
  readonly places: readonly WaterPlace[]
  readonly lit: readonly WaterPlace[]
}

const fieldsOf = (known: EquipmentDescribed | undefined): Fields => {
  if (!known)
    return {
      devices: usualDevices,
      stops: deviceSorts.filter(usuallyStops),
      places: ['display', 'sump'],
      lit: ['sump'],
    }
  const has = (sort: DeviceSort) => known.devices.find(({ device }) => device === sort)
  return {
    devices: deviceSorts.filter(has),
    stops: deviceSorts.filter((sort) => has(sort)?.stops ?? usuallyStops(sort)),
    places: known.places.map(({ place }) => place),
    lit: known.places.flatMap(({ place, mayBeLit }) => (mayBeLit ? [place] : [])),
  }
}

export const Equipment = ({ tank, reading }: OfTank) => {
  const { world, now, zone, today } = reading
  const known = equipmentAt(world, tank.tank, now)
  const act = useSeeding(reading)
  const [, go] = useLocation()
  const { fields, change, clear, restoredFrom } = useDraft(`seeding/equipment/${tank.tank}`, fieldsOf(known))
  const { devices, stops, places, lit } = fields
  const save = async () => {
    const written = await act.send((now_, { now: at }) => {
      const before = equipmentAt(now_, tank.tank, at)?.devices ?? []
      return placed(
        describeEquipment(
          now_,
          {
            tank: tank.tank,
            // Two of a sort, told by another phone, stay two.
            devices: devices.flatMap((device) => {
              const same = before.filter((each) => each.device === device)
              const all = same.length > 0 ? same : [{ key: device, device }]
              return all.map((each) => ({ ...each, stops: stops.includes(device) }))
            }),
            places: places.map((place) => ({ place, mayBeLit: place !== 'display' && lit.includes(place) })),
          },
          at,
        ),
        ({ why }) => (why === 'noPlaces' ? 'places' : ''),
      )
    })
    if (!written) return
    await clear()
    go(`/seeding/${tank.tank}`)
  }
  const dimmable = placeOptions.filter(({ value }) => value !== 'display' && places.includes(value))
  return (
    <Page title="What runs here" answer={`What runs on ${tank.name}? The steps of the night are made from it.`}>
      <Form onSend={save}>
        <Unfinished since={restoredFrom} zone={zone} today={today} onFresh={() => void clear()} />
        <Picks
          label="Touch all there is"
          options={deviceSorts.map(deviceOption)}
          values={devices}
          onChange={(chosen) => change({ devices: chosen })}
        />
        {devices.length > 0 && (
          <Picks
            label="Which of it stops for a pour?"
            hint="As the bottle’s label says, or as you like it. The return pump, the skimmer and the UV lamp usually stop; wave pumps are up to you."
            options={devices.map(deviceOption)}
            values={stops.filter((each) => devices.includes(each))}
            onChange={(chosen) => change({ stops: [...chosen, ...stops.filter((each) => !devices.includes(each))] })}
          />
        )}
        <Picks
          label="Where may live bottles go?"
          options={placeOptions}
          values={places}
          onChange={(chosen) => {
            act.reset()
            change({ places: chosen })
          }}
          error={act.wrong('places')}
        />
        {dimmable.length > 0 && (
          <Picks
            label="Whose own lamp may burn at night?"
            hint="Where no fish hunts. The display has to be dark."
            options={dimmable}
            values={lit.filter((each) => places.includes(each))}
            onChange={(chosen) => change({ lit: chosen })}
          />
        )}
        <WholeForm act={act} />
        <Actions>
          <Button submit waiting={act.busy}>
            Save
          </Button>
        </Actions>
      </Form>
    </Page>
  )
}
