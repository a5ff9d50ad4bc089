/** A bag's label: to be printed and stuck on, or in big plain lines for a pen. */
import { type BagToLabel, drawnSquares, squaresOf } from '../../../../core/index.ts'
import {
  bagLines,
  forTheTank,
  laterWords,
  notFood,
  outAlreadyWords,
  squaresWords,
  tickRule,
  warningLines,
} from '../../../words/paper.ts'
import type { Reading } from '../../useReading.ts'
import { Squares } from './Squares.tsx'

type LabelProps = { readonly bag: BagToLabel; readonly reading: Reading }

export const Label = ({ bag, reading: { world, now } }: LabelProps) => {
  const drawn = drawnSquares(squaresOf(world, bag.lot))
  const before = outAlreadyWords(drawn)
  const later = laterWords(drawn)
  return (
    <li className="label">
      <div className="label-text">
        <h2 className="label-mark">{bag.lot.made.mark}</h2>
        {warningLines(bag).map((line) => (
          <p className="label-warning" key={line}>
            {line}
          </p>
        ))}
        {bagLines(bag, world, now).map((line) => (
          <p key={line}>{line}</p>
        ))}
        <p className="label-not-food">{notFood}</p>
        <p>{forTheTank}</p>
      </div>
      <div className="label-ticks">
        {before && <p>{before}</p>}
        <Squares drawn={drawn} />
        {later && <p>{later}</p>}
        <p>{tickRule}</p>
      </div>
    </li>
  )
}

/** The same, for whoever has a pen and no printer. */
export const LabelByHand = ({ bag, reading: { world, now } }: LabelProps) => {
  const drawn = drawnSquares(squaresOf(world, bag.lot))
  const lines = [
    ...warningLines(bag),
    ...bagLines(bag, world, now),
    ...[outAlreadyWords(drawn)].filter((line) => line !== undefined),
    squaresWords(drawn),
    tickRule,
  ]
  return (
    <li className="by-hand">
      <h2 className="label-mark">{bag.lot.made.mark}</h2>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <p className="label-not-food">{notFood}</p>
      <p>{forTheTank}</p>
    </li>
  )
}
