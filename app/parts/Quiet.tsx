/** A line that may be overlooked: where a figure comes from. */
import '../styles/fields.css'
import type { ReactNode } from 'react'

export const Quiet = ({ children }: { readonly children: ReactNode }) => <p className="field-hint">{children}</p>
