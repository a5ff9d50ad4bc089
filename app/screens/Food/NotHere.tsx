/** A link to something that is not on record, or not any more. */
import { Page } from '../../parts/Page.tsx'

export const NotHere = ({ title, says }: { readonly title: string; readonly says: string }) => (
  <Page title={title} answer={says}>
    <p>
      <a href="#/food">All the food there is</a>
    </p>
  </Page>
)
