/** The way between the rooms: under the thumb on a phone, down the side at a desk. */
import '../styles/frame.css'
import '../styles/rooms.css'
import { RoomIcon, type RoomId } from './RoomIcon.tsx'

export type Room = {
  readonly id: RoomId
  readonly label: string
  readonly href: string
  /** Something waits there, in words for ears; for eyes a small ring. */
  readonly waits?: string | undefined
}

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
      {rooms.map(({ id, label, href, waits }) => (
        <li key={id}>
          <a className="rooms-link" href={href} aria-current={id === current ? 'page' : undefined}>
            <RoomIcon room={id} />
            <span>
              {label}
              {waits && <span className="for-ears"> ({waits})</span>}
            </span>
            {waits && (
              <svg className="rooms-waits" viewBox="0 0 10 10" aria-hidden="true">
                <circle cx="5" cy="5" r="3.6" />
              </svg>
            )}
          </a>
        </li>
      ))}
    </ul>
  </nav>
)
