/** Questions one under the other, sent with a button or with Enter. */
import './food.css'
import type { ReactNode } from 'react'

type FormProps = { readonly onSend: () => void | Promise<void>; readonly children: ReactNode }

export const Form = ({ onSend, children }: FormProps) => (
  <form
    className="food-form"
    noValidate
    onSubmit={(event) => {
      event.preventDefault()
      void onSend()
    }}
  >
    {children}
  </form>
)
