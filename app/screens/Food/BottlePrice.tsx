/** What a bottle cost. Unknown is unknown, and free is said. */
import { useEffect, useRef } from 'react'
import { purchaseOf } from '../../../core/index.ts'
import { Choice } from '../../parts/Choice.tsx'
import { Field } from '../../parts/Field.tsx'
import { NumberField } from '../../parts/NumberField.tsx'
import { useReading } from '../useReading.ts'
import type { BottleQuestionsProps } from './BottleQuestions.tsx'

type BottlePriceProps = Pick<BottleQuestionsProps, 'fields' | 'change' | 'act'> & {
  /** She came for the price alone: the form opens at it. */
  readonly begin: boolean
}

export const BottlePrice = ({ fields, change, act, begin }: BottlePriceProps) => {
  const { world, now } = useReading()
  const parcel = purchaseOf(world, fields.bottle, now)
  const onRecord = world.bottles.has(fields.bottle)
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
          ...(onRecord
            ? []
            : [
                {
                  value: 'parcel',
                  label: 'It came in a parcel with other things',
                  hint: 'Its share is asked next.',
                } as const,
              ]),
        ]}
        value={onRecord && fields.paid === 'parcel' ? 'notKnown' : fields.paid}
        onChange={(paid) => change({ paid })}
      />
      {onRecord && (
        <a className="kind-link" href={`#/food/purchase/${parcel?.purchase ?? `new/${fields.bottle}`}`}>
          {parcel ? 'It stands in a parcel: its share there is what counts' : 'It came in a parcel with other things'}
        </a>
      )}
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
