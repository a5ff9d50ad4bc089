/** What to write on the bag, as it would stand there. */
import './food.css'
import { type LabelOf, labelLines } from '../../words/freezing.ts'

export const BagLabel = ({ label }: { readonly label: LabelOf }) => (
  <figure>
    <figcaption className="shelf-facts">Write on the bag:</figcaption>
    <div className="bag-label">
      {labelLines(label).map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  </figure>
)
