/** Which screen is shown where, and the frame around it. */
import { lazy, Suspense, useEffect, useLayoutEffect } from 'react'
import { Route, Router, Switch, useLocation } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import { backupOverdue, endsSoon, inTheDark, type RunId, tanksAt, wallDay } from '../core/index.ts'
import { Frame } from './parts/Frame.tsx'
import { Loading } from './parts/Loading.tsx'
import type { RoomId } from './parts/RoomIcon.tsx'
import { type Room, Rooms } from './parts/Rooms.tsx'
import { Broken } from './screens/Broken.tsx'
import { MadeUpBar } from './screens/MadeUpBar.tsx'
import { Notices } from './screens/Notices.tsx'
import { Tonight } from './screens/Tonight/Tonight.tsx'
import { tonightShown } from './screens/tonightShown.ts'
import { useNow } from './state/clock.ts'
import { useMatter } from './state/device.ts'
import { lookingRound } from './state/household.ts'
import { loadPart } from './state/leave.ts'
import { firstScreenStands, type Status, useStatus, useWorld } from './state/store.ts'
import { backupMark, calendarMark } from './words/phone.ts'

// Tonight is in the first part; what she opens in daylight may take a moment longer.
const Food = lazy(async () => ({ default: (await loadPart(() => import('./screens/Food/rooms.tsx'))).FoodRoutes }))
const Water = lazy(async () => ({ default: (await loadPart(() => import('./screens/Water/rooms.tsx'))).WaterRoutes }))
const Dose = lazy(async () => ({ default: (await loadPart(() => import('./screens/Dose/Dose.tsx'))).Dose }))
const Diary = lazy(async () => ({ default: (await loadPart(() => import('./screens/Diary/rooms.tsx'))).DiaryRoutes }))
const ThisPhone = lazy(async () => ({
  default: (await loadPart(() => import('./screens/ThisPhone/rooms.tsx'))).PhoneRoutes,
}))
const Seeding = lazy(async () => ({
  default: (await loadPart(() => import('./screens/Seeding/rooms.tsx'))).SeedingRoutes,
}))
const RunBar = lazy(async () => ({ default: (await loadPart(() => import('./screens/Seeding/RunBar.tsx'))).RunBar }))
const Watch = lazy(async () => ({ default: (await loadPart(() => import('./screens/Watch/Watch.tsx'))).Watch }))
const FirstRun = lazy(async () => ({
  default: (await loadPart(() => import('./screens/FirstRun/FirstRun.tsx'))).FirstRun,
}))

const rooms = [
  { id: 'tonight', label: 'Tonight', href: '#/' },
  { id: 'food', label: 'Food', href: '#/food' },
  { id: 'water', label: 'Water', href: '#/water' },
  { id: 'diary', label: 'Diary', href: '#/diary' },
  { id: 'phone', label: 'This phone', href: '#/phone' },
] as const

/** A month without a backup and a calendar about to end are marked, once all of the book is read and if there is one of her own. */
const useRooms = (status: Status): readonly Room[] => {
  const world = useWorld()
  const now = useNow()
  const last = useMatter('lastBackup')
  const [tank] = tanksAt(world, now)
  const overdue =
    status === 'ready' &&
    !lookingRound &&
    tank !== undefined &&
    backupOverdue(world, last, { today: wallDay(now, tank.zone), zone: tank.zone })
  const calendar = useMatter('calendar')?.events.at(-1)
  const ends = tank !== undefined && calendar !== undefined && endsSoon(calendar.night, wallDay(now, tank.zone))
  const waits = overdue ? backupMark : ends ? calendarMark : undefined
  return rooms.map((room) => (room.id === 'phone' && waits ? { ...room, waits } : room))
}

/** Pages for standing at the tank in the dark: red whatever the hour. */
const byTheTank = (path: string): boolean => path === '/watch' || path.endsWith('/life/torch')

const roomAt = (path: string): RoomId =>
  path.startsWith('/seeding')
    ? 'water'
    : (rooms.find(({ id, href }) => id !== 'tonight' && path.startsWith(href.slice(1)))?.id ?? 'tonight')

export const App = () => (
  <Router hook={useHashLocation}>
    {lookingRound && <MadeUpBar />}
    <Sheet />
  </Router>
)

const Sheet = () => {
  const [path] = useLocation()
  const status = useStatus()
  const world = useWorld()
  const room = roomAt(path)
  useLook(room, status, path)
  useEffect(firstScreenStands, [])
  const empty = world.tanks.size === 0
  // Not the first evening: a book that cannot be read is no empty one. The notice above says what to do.
  const unread = empty && (status === 'storageFailed' || status === 'storageFull')
  const opening = status === 'opening' || status === 'blocked' || (status === 'glance' && room !== 'tonight')
  return (
    <Frame rooms={<Rooms says="Rooms" name="Smallhours" rooms={useRooms(status)} current={room} />}>
      <Notices>
        {world.runs.size > 0 && (
          <Suspense fallback={null}>
            <RunBar path={path} />
          </Suspense>
        )}
      </Notices>
      {opening ? (
        <Loading says="Opening the book …" />
      ) : (
        <Broken>
          <Suspense fallback={<Loading says="One moment …" />}>
            <Switch>
              <Route path="/food/*?" component={Food} />
              <Route path="/water/*?" component={Water} />
              <Route path="/dose/:plan" component={Dose} />
              <Route path="/diary/*?" component={Diary} />
              <Route path="/phone/*?" component={ThisPhone} />
              <Route path="/seeding/*?" component={Seeding} />
              <Route path="/watch" component={Watch} />
              <Route component={unread ? Nothing : empty ? FirstRun : Tonight} />
            </Switch>
          </Suspense>
        </Broken>
      )}
    </Frame>
  )
}

const Nothing = () => null

/** Red and dark by itself on the evening watch, in a count by torch, from an hour before pumps stop until the morning, and on Tonight while a lamp is out; the kitchen keeps the day. Forced or refused in This phone. */
const useLook = (room: RoomId, status: Status, path: string) => {
  // Not by way of the household's calendar: until the book is open that would ask the phone for its zone, which is slow.
  const world = useWorld()
  const now = useNow()
  const wish = useMatter('look') ?? 'byItself'
  const run = world.runs.get(path.split('/run/')[1] as RunId)
  const pouring = run !== undefined && inTheDark(run, now)
  const dark = byTheTank(path) || pouring || (room === 'tonight' && tonightShown(world, now).some((line) => line.dark))
  // While the book is being opened it is not known, and the page stays as dark as it began.
  const unknown = wish === 'byItself' && (status === 'opening' || status === 'blocked')
  const look = wish === 'byItself' ? (dark ? 'night' : 'day') : wish
  // Before the first frame, not after it: that frame would shine.
  useLayoutEffect(() => {
    if (unknown) return
    document.documentElement.dataset.look = look
    // The bar above the page belongs to the phone, and must not shine either.
    for (const bar of document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]'))
      bar.content = look === 'night' ? '#000000' : '#f5efe0'
  }, [look, unknown])
}
