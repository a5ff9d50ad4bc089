/** A volume so vast that it may be a slip: asked once, and the answer is a touch. */
import { Button } from '../../parts/Actions.tsx'
import { Notice } from '../../parts/Notice.tsx'
import type { Reading } from '../../words/reading.ts'
import { type AnyRefusal, refusalText } from '../../words/refusals.ts'

type Props = {
  readonly refusal: AnyRefusal & { readonly why: 'vast' }
  readonly reading: Reading
  readonly onYes: () => void
}

export const VastQuestion = ({ refusal, reading, onYes }: Props) => (
  <Notice kind="refusal">
    <p>{refusalText(refusal, reading)}</p>
    <Button kind="quiet" onAct={onYes}>
      Yes, it is that big
    </Button>
  </Notice>
)
