/** Line drawings of the five rooms, on a grid of 24, drawn with the pen of the text beside them. */
export type RoomId = 'tonight' | 'food' | 'water' | 'diary' | 'phone'

/** A low moon over the water; a bottle, half full; a tank with its waterline; an open book; a phone that rings. */
const drawings: Readonly<Record<RoomId, string>> = {
  tonight: 'M16.6 12.4A6 6 0 1 1 11.1 3a4.9 4.9 0 0 0 5.5 9.4ZM2.5 19.2q2.4-2 4.75 0t4.75 0 4.75 0 4.75 0',
  food: 'M9.5 2.8h5v2.9h-5zM9.9 5.7v2.1L7.2 11v10.2h9.6V11l-2.7-3.2V5.7M7.2 14.6h9.6',
  water: 'M2.8 4.6v14.8h18.4V4.6M2.8 9q2.3-1.7 4.6 0t4.6 0 4.6 0 4.6 0M7 19.4v-3.2M9.4 19.4v-5',
  diary:
    'M12 6.2Q8.4 3.6 3 4.3v14.2q5.4-.7 9 1.9 3.6-2.6 9-1.9V4.3q-5.4-.7-9 1.9Zm0 0v14.2M5.8 8.4q1.9-.1 3.6.7M5.8 11.8q1.9-.1 3.6.7',
  phone: 'M5.6 2.6h9.6v18.8H5.6zM9 18.6h2.8M18.2 8.7q1.3 1.8 0 3.6M20.5 7q2.5 3.5 0 7',
}

export const RoomIcon = ({ room }: { readonly room: RoomId }) => (
  <svg className="rooms-icon" viewBox="0 0 24 24" aria-hidden="true">
    <path d={drawings[room]} />
  </svg>
)
