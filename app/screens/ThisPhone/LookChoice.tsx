/** Paper or red lamp: by itself, or always the one or the other. */
import { useState } from 'react'
import { Choice } from '../../parts/Choice.tsx'
import { setMatter, useMatter } from '../../state/device.ts'
import type { StorageRefusal } from '../../storage/connection.ts'
import { looks } from '../../words/phone.ts'
import type { Reading } from '../../words/reading.ts'
import { refusalText } from '../../words/refusals.ts'

export const LookChoice = ({ reading }: { readonly reading: Reading }) => {
  const look = useMatter('look') ?? 'byItself'
  const [refusal, setRefusal] = useState<StorageRefusal>()
  return (
    <Choice
      label="How the screen looks"
      options={looks}
      value={look}
      error={refusal && refusalText(refusal, reading)}
      onChange={async (chosen) => {
        const kept = await setMatter('look', chosen)
        setRefusal(kept.ok ? undefined : kept.refusal)
      }}
    />
  )
}
