/** Beside a dose far above the range: the way to what to do about it. */
import { doseMarks, type Fact, isFarTooMuch, type World } from '../../core/index.ts'

export const TooMuchLink = ({ fact, world }: { readonly fact: Fact; readonly world: World }) => {
  if (fact.kind !== 'doseGiven' && fact.kind !== 'doseGivenOffPlan' && fact.kind !== 'doseSetAside') return null
  if (!isFarTooMuch(doseMarks(world, fact))) return null
  const plan = fact.served.find((part) => part.plan)?.plan
  return (
    <p>
      <a className="kind-link" href={`#/food/too-much${plan ? `/${plan}` : ''}`}>
        Far too much: what to do now
      </a>
    </p>
  )
}
