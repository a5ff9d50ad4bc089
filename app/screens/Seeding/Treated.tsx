/** Medicine or copper in the water: no live bottles are planned while it is there. What was poured is noted all the same. */
import { noteTreated, type TankTreated, treatedAt } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { Section } from '../../parts/Section.tsx'
import { useDraft } from '../../state/useDraft.ts'
import type { OfTank } from './ofTank.ts'
import { placed, useSeeding } from './useSeeding.ts'
import { WholeForm } from './WholeForm.tsx'

const options = [
  { value: 'nothing', label: 'Neither' },
  { value: 'medicine', label: 'A medicine' },
  { value: 'copper', label: 'Copper' },
] as const
const said = {
  nothing: 'Neither a medicine nor copper is in it.',
  medicine: 'A medicine is in it.',
  copper: 'Copper is in it.',
} as const

export const Treated = ({ tank, reading }: OfTank) => {
  const known = treatedAt(reading.world, tank.tank, reading.now)
  const act = useSeeding(reading)
  const { fields, change, clear } = useDraft<{ with: TankTreated['with']; what: string }>(
    `seeding/treated/${tank.tank}`,
    { with: known?.with ?? 'nothing', what: known?.what ?? '' },
  )
  const save = async () => {
    const what = fields.with === 'nothing' ? '' : fields.what.trim()
    const done = await act.send((world, { now }) =>
      placed(noteTreated(world, { tank: tank.tank, with: fields.with, ...(what ? { what } : {}) }, now)),
    )
    if (done) await clear()
  }
  return (
    <Section title="Medicine or copper">
      <p>
        {known ? said[known.with] : 'Not said yet.'} {known?.what ?? ''}
      </p>
      <MoreExact label="Say what is in it">
        <Form onSend={save}>
          <Choice
            label="What is in the water now?"
            options={options}
            value={fields.with}
            onChange={(chosen) => change({ with: chosen })}
          />
          {fields.with !== 'nothing' && (
            <Field
              label="What, and since when?"
              hint="May be left empty."
              value={fields.what}
              onChange={(what) => change({ what })}
            />
          )}
          <WholeForm act={act} />
          <Actions>
            <Button kind="quiet" submit waiting={act.busy}>
              Note it
            </Button>
          </Actions>
        </Form>
      </MoreExact>
    </Section>
  )
}
