/** Everything but the usual, behind one line, and fetched when that is opened. */
import { Suspense, useState } from 'react'
import type { Serving, TonightLine } from '../../../core/index.ts'
import { Loading } from '../../parts/Loading.tsx'
import { MoreExact } from '../../parts/MoreExact.tsx'
import type { Reading } from '../useReading.ts'
import { Otherwise } from './rare.ts'
import type { Dosing } from './useDosing.ts'

type Props = {
  readonly line: TonightLine
  readonly serving: Serving | undefined
  readonly reading: Reading
  readonly dosing: Dosing
}

export const SomethingElse = (props: Props) => {
  const [wanted, setWanted] = useState(false)
  return (
    <MoreExact label="Something else happened" onOpen={() => setWanted(true)}>
      {wanted && (
        <Suspense fallback={<Loading says="One moment …" />}>
          <Otherwise {...props} />
        </Suspense>
      )}
    </MoreExact>
  )
}
