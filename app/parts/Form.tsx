/** Questions one under the other, sent with a button or with Enter. */
import '../styles/fields.css'
import { type FormEvent, type ReactNode, useRef } from 'react'

type FormProps = { readonly onSend: () => void | Promise<void>; readonly children: ReactNode }

export const Form = ({ onSend, children }: FormProps) => {
  const form = useRef<HTMLFormElement>(null)
  const send = async (event: FormEvent) => {
    event.preventDefault()
    await onSend()
    // After the answer is drawn: the form may have left by then, or hold a question above or below the screen.
    requestAnimationFrame(() => form.current && leadToTrouble(form.current))
  }
  return (
    <form className="form" noValidate ref={form} onSubmit={(event) => void send(event)}>
      {children}
    </form>
  )
}

/** A refusal out of sight looks like a dead button: the first one is brought into view and given the focus. */
const leadToTrouble = (form: HTMLFormElement) => {
  const trouble = form.querySelector<HTMLElement>('[aria-invalid="true"], [role="alert"]')
  if (!trouble) return
  const field = trouble.matches('input, textarea, select')
    ? trouble
    : trouble.querySelector<HTMLElement>('input, textarea, select, button')
  // Absent where nothing is laid out.
  trouble.scrollIntoView?.({ block: 'center' })
  field?.focus({ preventScroll: true })
}
