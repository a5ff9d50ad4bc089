/** What every input has: a label, perhaps a hint, perhaps what is wrong with it, tied together for ears as for eyes. */
import '../styles/fields.css'
import { type ReactNode, useId } from 'react'

export type Asked = {
  readonly label: string
  /** What it is about, for ears: two of one label may stand on a page. */
  readonly about?: string | undefined
  readonly hint?: string | undefined
  readonly error?: string | undefined
}

export type Wires = {
  readonly id: string
  readonly 'aria-describedby': string | undefined
  readonly 'aria-invalid': true | undefined
}

type LabelledProps = Asked & {
  /** Words that follow the input and belong to it: a day echoed in words. */
  readonly echo?: string | undefined
  readonly children: (wires: Wires) => ReactNode
}

export const Labelled = ({ label, about, hint, error, echo, children }: LabelledProps) => {
  const id = useId()
  const said = [hint && `${id}-hint`, echo && `${id}-echo`, error && `${id}-error`].filter(Boolean).join(' ')
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
        {about && <span className="for-ears">: {about}</span>}
      </label>
      {hint && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {children({ id, 'aria-describedby': said || undefined, 'aria-invalid': error ? true : undefined })}
      {echo && (
        <p className="field-echo" id={`${id}-echo`}>
          {echo}
        </p>
      )}
      {error && <FieldError id={`${id}-error`}>{error}</FieldError>}
    </div>
  )
}

export const FieldError = ({ id, children }: { readonly id: string; readonly children: string }) => (
  <p className="field-error" id={id}>
    {children}
  </p>
)
