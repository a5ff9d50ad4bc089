/** What is taken for granted of every bottle: when it comes, the portion, the trays. */
import { DayField } from '../../../parts/DayField.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { NumberField } from '../../../parts/NumberField.tsx'
import { dayEcho } from '../../../words/dates.ts'
import { fieldText } from '../../../words/foodRefusals.ts'
import { howWords } from '../../../words/worth.ts'
import { useReading } from '../../useReading.ts'
import { TrayQuestions } from '../TrayQuestions.tsx'
import type { OffersFields } from './offerFields.ts'
import type { Offers } from './useOffers.ts'

type OffersHowProps = {
  readonly fields: OffersFields
  readonly offers: Offers
  readonly change: (changed: Partial<OffersFields>) => void
  readonly mayFreeze: boolean
}

export const OffersHow = ({
  fields,
  offers: { wrongHow, each, portion, wells },
  change,
  mayFreeze,
}: OffersHowProps) => {
  const reading = useReading()
  const says = (at: keyof typeof wrongHow) => {
    const refusal = wrongHow[at]
    return refusal && fieldText(refusal, reading)
  }
  return (
    <MoreExact label={howWords(mayFreeze ? each : undefined, wells)} open={Object.keys(wrongHow).length > 0}>
      <DayField
        label="It would come on"
        value={fields.arrives}
        earliest={reading.today}
        echo={dayEcho(fields.arrives)}
        error={says('arrives')}
        onChange={(arrives) => change({ arrives })}
      />
      {mayFreeze && (
        <>
          <NumberField
            label="One portion"
            unit="mL"
            value={portion}
            onChange={(typed) => change({ portion: typed })}
            error={says('portion')}
          />
          <TrayQuestions
            fields={fields}
            change={change}
            wrong={(at) => (at === 'rows' || at === 'columns' ? says(at) : undefined)}
          />
        </>
      )}
    </MoreExact>
  )
}
