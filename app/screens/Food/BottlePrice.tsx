/** What a bottle cost. Unknown is unknown, and free is said. */
import { useEffect, useRef } from 'react'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import type { BottleQuestionsProps } from './BottleQuestions.tsx'

type BottlePriceProps = Pick<BottleQuestionsProps, 'fields' | 'change' | 'act'> & {
  /** She came for the price alone: the form opens at it. */
  readonly begin: boolean
}

export const BottlePrice = ({ fields, change, act, begin }: BottlePriceProps) => {
  const shown = fields.paid === 'price'
  const asked = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (!begin || !shown) return
    asked.current?.querySelector('input')?.focus()
  }, [begin, shown])
  return (
    <>
      <Choice
        label="What did it cost?"
        options={[
          { value: 'price', label: 'A price' },
          { value: 'free', label: 'It was free' },
          { value: 'notKnown', label: 'Not known' },
        ]}
        value={fields.paid}
        onChange={(paid) => change({ paid })}
      />
      {shown && (
        <div className="food-act" ref={asked}>
          <NumberField
            label="Price"
            value={fields.price}
            unit={fields.currency.toUpperCase()}
            error={act.wrong('price')}
            onChange={(price) => change({ price })}
          />
          <Field
            label="Currency"
            hint="Three letters, such as GBP, EUR or USD."
            value={fields.currency}
            error={act.wrong('currency')}
            onChange={(currency) => change({ currency })}
          />
        </div>
      )}
    </>
  )
}
