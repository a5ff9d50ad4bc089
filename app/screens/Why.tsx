/** Why, if she cares to say: one touch, or words of her own behind one more. At the freezer nobody has to type. */
import { useState } from 'react'
import { Chips } from '../parts/Chips.tsx'
import { Field } from '../parts/Field.tsx'
import { type Reason, reasonOptions } from '../words/reasons.ts'

type WhyProps = {
  readonly label?: string
  readonly reasons: readonly Reason[]
  /** A reason's name, her own words, or nothing. */
  readonly value: string
  readonly onChange: (why: string) => void
}

const ownWords = 'ownWords'

export const Why = ({ label = 'Why? It may be skipped.', reasons, value, onChange }: WhyProps) => {
  const known = reasons.find((reason) => reason === value) ?? null
  const [picked, setPicked] = useState(false)
  // Words that a draft brings back, a render later, are her own as well.
  const own = picked || (value !== '' && known === null)
  return (
    <>
      <Chips
        label={label}
        options={[...reasonOptions(...reasons), { value: ownWords, label: 'something else' }]}
        value={own ? ownWords : known}
        onChange={(chosen) => {
          setPicked(chosen === ownWords)
          onChange(chosen === null || chosen === ownWords ? '' : chosen)
        }}
      />
      {own && (
        <Field
          label="In your own words"
          value={value}
          onChange={(typed) => {
            setPicked(true)
            onChange(typed)
          }}
        />
      )}
    </>
  )
}

/** As a request takes it: no reason is no field. */
export type Because = { readonly why?: string }
export const because = (why: string): Because => (why.trim() === '' ? {} : { why: why.trim() })
