/** A moment's wait, said once. */
import '../styles/page.css'

export const Loading = ({ says }: { readonly says: string }) => <output className="loading">{says}</output>
