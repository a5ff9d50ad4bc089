/** Leaves a form: what was typed in it is let go, so that it does not stand there another day. */
import { useLocation } from 'wouter'
import { LinkButton } from '../../parts/Actions.tsx'

export const NotNow = ({ clear }: { readonly clear: () => Promise<void> }) => {
  const [, go] = useLocation()
  const leave = () => {
    void clear()
    go('/food')
  }
  return <LinkButton onAct={leave}>Not now</LinkButton>
}
