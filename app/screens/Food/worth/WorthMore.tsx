/** The size of a portion, and where all that is in the bottle goes. */
import type { Day } from '../../../../core/index.ts'
import { Facts } from '../../../parts/Facts.tsx'
import { MoreExact } from '../../../parts/MoreExact.tsx'
import { NumberField } from '../../../parts/NumberField.tsx'
import { fieldText } from '../../../words/foodRefusals.ts'
import { millilitres } from '../../../words/numbers.ts'
import { useReading } from '../../useReading.ts'
import type { Worth } from './useWorth.ts'

type WorthMoreProps = { readonly worth: Worth; readonly day: Day; readonly mayFreeze: boolean }

export const WorthMore = ({ worth, day, mayFreeze }: WorthMoreProps) => {
  const reading = useReading()
  const { freezing, each, portion, choosePortion, trouble } = worth
  const then = mayFreeze ? freezing.ifFrozenOn(day) : undefined
  const fresh = then?.fresh ?? freezing.ifNot.fresh
  const unused = then?.wasted ?? freezing.ifNot.wasted
  return (
    <MoreExact label={mayFreeze ? `Portions of ${millilitres(each)}, and where it all goes` : 'Where it all goes'}>
      {mayFreeze && (
        <NumberField
          label="One portion"
          hint="As many as make one dose, or one of the size your wells hold."
          unit="mL"
          value={portion}
          onChange={choosePortion}
          error={trouble && fieldText(trouble, reading)}
        />
      )}
      <Facts
        facts={[
          { term: 'In the bottle', fact: millilitres(freezing.contents) },
          { term: 'Given fresh', fact: millilitres(fresh.amount) },
          ...(then ? [{ term: 'Frozen and used', fact: millilitres(then.used) }] : []),
          { term: 'Won’t get used', fact: millilitres(unused) },
          { term: 'Stays on the walls', fact: millilitres(freezing.residue) },
        ]}
      />
    </MoreExact>
  )
}
