/** What an entry says: always as text, and a long note folded until she wants it. */
import { useState } from 'react'
import { LinkButton } from '../../parts/Actions.tsx'
import { folded } from '../../words/notes.ts'

export const EntryText = ({ text }: { readonly text: string }) => {
  const [open, setOpen] = useState(false)
  const short = folded(text)
  return short === undefined ? (
    text
  ) : (
    <>
      {open ? text : short}{' '}
      <LinkButton onAct={() => setOpen(!open)}>{open ? 'Fold it up' : 'Read all of it'}</LinkButton>
    </>
  )
}
