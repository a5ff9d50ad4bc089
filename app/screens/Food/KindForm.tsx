/** A food: what its label says, with usual figures where she does not know. */
import { useLocation } from 'wouter'
import { type FoodId, foodAt, foodRetired, usualFood } from '../../../core/index.ts'
import { Actions, Button } from '../../parts/Actions.tsx'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { Form } from '../../parts/Form.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { Page } from '../../parts/Page.tsx'
import { newId } from '../../state/ids.ts'
import { useDraft } from '../../state/useDraft.ts'
import { foodKindOptions } from '../../words/names.ts'
import { Unfinished } from '../Unfinished.tsx'
import { useReading } from '../useReading.ts'
import { ContentsQuestions } from './ContentsQuestions.tsx'
import { KeepingQuestions } from './KeepingQuestions.tsx'
import { KindBack, KindEnding } from './KindEnding.tsx'
import { figureFields, type KindFields, knownKindFields, newKindFields } from './kindFields.ts'
import { NotNow } from './NotNow.tsx'
import { RangeQuestions } from './RangeQuestions.tsx'
import { Refused } from './Refused.tsx'
import { logKind } from './readKind.ts'
import { type Act, useAct } from './useAct.ts'

export type KindQuestionsProps = {
  readonly fields: KindFields
  readonly change: (fields: Partial<KindFields>) => void
  readonly wrong: (field: string) => string | undefined
}

const contentsWrong = ({ wrong }: Act): boolean =>
  (['dry', 'cells', 'cellPicograms', 'nitrogen', 'phosphorus'] as const).some(wrong)

export const KindForm = ({ id }: { readonly id: FoodId }) => {
  const reading = useReading()
  const { world, now } = reading
  const [, go] = useLocation()
  const act = useAct()
  const known = foodAt(world, id, now)
  const gone = foodRetired(world, id, now)
  const {
    fields,
    change: type,
    clear,
    restoredFrom,
  } = useDraft(`food/${id}`, known ? knownKindFields(known) : newKindFields(newId<FoodId>()))
  const change = (changed: Partial<KindFields>) => {
    act.reset()
    type(changed)
  }
  const save = async () => {
    if (!(await act.send(logKind(fields)))) return
    await clear()
    go('/food')
  }
  const shared = { fields, change, wrong: act.wrong }
  return (
    <Page
      title={known?.name ?? 'A new food'}
      answer={
        gone
          ? 'No longer bought.'
          : known
            ? 'What its label says. Doses given already keep the figures of their time.'
            : 'What does its label say?'
      }
    >
      {known && <KindBack food={known} />}
      <Form onSend={save}>
        <Unfinished {...reading} since={restoredFrom} onFresh={clear} />
        <Field
          label="What do you call it?"
          value={fields.name}
          onChange={(name) => change({ name })}
          error={act.wrong('name')}
        />
        <Choice
          label="What kind of food is it?"
          hint="Usual figures for the kind are put in below."
          options={foodKindOptions}
          value={fields.sort}
          onChange={(sort) => change(figureFields(usualFood[sort]))}
        />
        <RangeQuestions {...shared} />
        <KeepingQuestions {...shared} />
        <MoreExact label="What is in it" open={contentsWrong(act)}>
          <ContentsQuestions {...shared} />
        </MoreExact>
        <MoreExact label="More exact" open={act.wrong('residue') !== undefined}>
          <NumberField
            label="What stays on the bottle’s walls"
            hint="Usually 2 to 5 %."
            unit="%"
            value={fields.residue}
            onChange={(residue) => change({ residue })}
            error={act.wrong('residue')}
          />
        </MoreExact>
        <Refused act={act} />
        <Actions>
          <Button submit waiting={act.busy}>
            {gone ? 'Save its figures and bring it back' : known ? 'Save its figures' : 'Put it on record'}
          </Button>
          <NotNow clear={clear} />
        </Actions>
      </Form>
      {known && <KindEnding food={known} />}
    </Page>
  )
}
