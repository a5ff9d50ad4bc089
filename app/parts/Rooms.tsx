/** The way between the rooms: under the thumb on a phone, down the side at a desk. */
import '../styles/frame.css'
import { RoomIcon, type RoomId } from './RoomIcon.tsx'

export type Room = { readonly id: RoomId; readonly label: string; readonly href: string }

type RoomsProps = {
  /** What the navigation is called by a screen reader. */
  readonly says: string
  /** The product's name, shown at desk width only. */
  readonly name: string
  readonly rooms: readonly Room[]
  readonly current: RoomId | null
}

export const Rooms = ({ says, name, rooms, current }: RoomsProps) => (
  <nav className="rooms" aria-label={says}>
    <p className="rooms-name">{name}</p>
    <ul className="rooms-list">
      {rooms.map(({ id, label, href }) => (
        <li key={id}>
          <a className="rooms-link" href={href} aria-current={id === current ? 'page' : undefined}>
            <RoomIcon room={id} />
            <span>{label}</span>
          </a>
        </li>
      ))}
    </ul>
  </nav>
)
