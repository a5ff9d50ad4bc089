/** What runs on a tank, which of it stops for a pour, and where live bottles may go. The steps of the night are made from it. */
import { useLocation } from 'wouter'
import { describeEquipment, deviceSorts, equipmentAt, whichOf } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Form } from '../../parts/Form.tsx'
import { Page } from '../../parts/Page.tsx'
import { Picks } from '../../parts/Picks.tsx'
import { useDraft } from '../../state/useDraft.ts'
import { deviceOption, placeOptions, sortOption } from '../../words/seeding.ts'
import { Unfinished } from '../Unfinished.tsx'
import { devicesOf, equipmentFields, placesOf } from './equipmentFields.ts'
import type { OfTank } from './ofTank.ts'
import { SeveralOfOne } from './SeveralOfOne.tsx'
import { placed, useSeeding } from './useSeeding.ts'
import { WholeForm } from './WholeForm.tsx'

export const Equipment = ({ tank, reading }: OfTank) => {
  const { world, now, zone, today } = reading
  const known = equipmentAt(world, tank.tank, now)
  const act = useSeeding(reading)
  const [, go] = useLocation()
  const { fields, change, clear, restoredFrom } = useDraft(`seeding/runs-here/${tank.tank}`, equipmentFields(known))
  const { sorts, places, lit } = fields
  const devices = devicesOf(fields)
  const had = (world.equipment.get(tank.tank) ?? []).flatMap((each) => each.devices.map(({ key }) => key))
  const save = async () => {
    const written = await act.send((latest, { now: at }) =>
      placed(describeEquipment(latest, { tank: tank.tank, devices, places: placesOf(fields) }, at), ({ why }) =>
        why === 'noPlaces' ? 'places' : '',
      ),
    )
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
          options={deviceSorts.map(sortOption)}
          values={sorts}
          onChange={(chosen) => change({ sorts: chosen })}
        />
        {sorts.length > 0 && <SeveralOfOne fields={fields} change={change} had={had} />}
        {devices.length > 0 && (
          <Picks
            label="Which of it stops for a pour?"
            hint="As the bottle’s label says, or as you like it. The return pump, the skimmer and the UV lamp usually stop; wave pumps are up to you."
            options={devices.map(({ key }) => deviceOption(key, (each) => whichOf(devices, each)))}
            values={devices.flatMap(({ key, stops }) => (stops ? [key] : []))}
            onChange={(chosen) =>
              change({
                devices: fields.devices.map((each) =>
                  sorts.includes(each.device) ? { ...each, stops: chosen.includes(each.key) } : each,
                ),
              })
            }
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
