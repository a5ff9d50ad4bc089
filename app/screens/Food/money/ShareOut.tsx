/** Each thing's share beside what it costs alone, ways to share it at a touch, and what is not shared yet. */
import { type BottleId, type Price, shareOffers, sharingOf } from '../../../../core/index.ts'
import { LinkButton } from '../../../parts/Actions.tsx'
import { NumberField } from '../../../parts/NumberField.tsx'
import { minorDigits } from '../../../words/money.ts'
import { bottleName } from '../../../words/names.ts'
import { asTyped, capital } from '../../../words/numbers.ts'
import { moneyText, offerWords, sharingWords } from '../../../words/parcel.ts'
import { useReading } from '../../useReading.ts'
import { changeThing } from './InTheParcel.tsx'
import type { PurchaseFormProps } from './PurchaseForm.tsx'
import { readPurchase } from './readPurchase.ts'

const asShare = (price: Price | undefined): string =>
  typeof price === 'object' ? asTyped(price.minor / 10 ** minorDigits(price.currency)) : price === 'free' ? '0' : ''

export const ShareOut = ({ fields, change, act }: PurchaseFormProps) => {
  const reading = useReading()
  const { world, now } = reading
  const { asked } = readPurchase(fields)
  const sharing = sharingOf(asked)
  const offers = shareOffers(asked)
  const { things } = fields
  const names = things.map(({ bottle, what }) =>
    bottle ? bottleName(world, bottle as BottleId, now) : what || 'the rest',
  )
  const ways = [
    { label: 'By what each costs alone', shares: offers.byAlone },
    { label: 'One as much as another', shares: offers.equally },
    { label: 'All on the food', shares: offers.allOnFood },
  ]
  const takeOffer = (shares: readonly Price[]) =>
    change({ things: things.map((thing, place) => ({ ...thing, share: asShare(shares[place]) })) })
  const code = fields.currency.toUpperCase()
  const said = sharing.ok ? sharingWords(sharing.value) : moneyText(sharing.refusal, reading)
  const wrong = act.wrong('sum')
  return (
    <>
      <p className="parcel-hint">Leave a share empty if you don’t know it; 0 says that it was free.</p>
      {things.map(({ key, share, alone }, place) => (
        <fieldset className="parcel-thing" key={key}>
          <legend className="choice-legend">{capital(names[place] ?? '')}</legend>
          <div className="pair">
            <NumberField
              label="Share, with postage"
              value={share}
              unit={code}
              error={act.wrong(`share ${place}`)}
              onChange={(typed) => change({ things: changeThing(things, place, { share: typed }) })}
            />
            <NumberField
              label="Price if bought alone"
              value={alone}
              unit={code}
              error={act.wrong(`alone ${place}`)}
              onChange={(typed) => change({ things: changeThing(things, place, { alone: typed }) })}
            />
          </div>
        </fieldset>
      ))}
      {ways.some(({ shares }) => shares) && (
        <fieldset className="parcel-offers" aria-label="Ways to share it">
          {ways.map(
            ({ label, shares }) =>
              shares && (
                <p key={label} className="parcel-way">
                  <LinkButton onAct={() => takeOffer(shares)}>{label}</LinkButton>
                  <span>{offerWords(shares)}</span>
                </p>
              ),
          )}
        </fieldset>
      )}
      <output className="said">{!wrong && said}</output>
      {wrong && (
        <p className="field-error" role="alert">
          {wrong}
        </p>
      )}
    </>
  )
}
