/** The small pieces the state is made of. */
import { expect, test } from 'vitest'
import { newDeviceId, newId } from '../../app/state/ids.ts'
import { turns } from '../../app/state/inTurn.ts'
import { signal } from '../../app/state/signal.ts'
import { isFrontDoor } from '../../app/worker/frontDoor.ts'
import { idPattern, isStamp, moment, nextStamp, type TankId } from '../../core/index.ts'

test('ids are short lower-case texts, no two alike, and a device id fits a stamp', () => {
  const ids = Array.from({ length: 2_000 }, () => newId<TankId>())
  expect(ids.filter((id) => !idPattern.test(id))).toEqual([])
  expect(new Set(ids).size).toBe(2_000)
  expect(isStamp(nextStamp(undefined, moment(1_772_000_000_000), newDeviceId()))).toBe(true)
})

test('one thing is done at a time, in the order asked, and a failure holds up nobody', async () => {
  const inTurn = turns()
  const done: string[] = []
  const slow = inTurn(async () => {
    await new Promise((resolve) => setTimeout(resolve, 20))
    done.push('slow')
    return 17
  })
  const failing = inTurn(async () => {
    done.push('failing')
    throw new Error('a bug')
  })
  const quick = inTurn(async () => {
    done.push('quick')
  })
  await expect(failing).rejects.toThrow('a bug')
  expect(await slow).toBe(17)
  await quick
  expect(done).toEqual(['slow', 'failing', 'quick'])
})

test('a listener that leaves while it is told does not silence the next one', () => {
  const { subscribe, tell } = signal()
  const heard: string[] = []
  const leave = subscribe(() => {
    heard.push('first')
    leave()
  })
  subscribe(() => heard.push('second'))
  tell()
  tell()
  expect(heard).toEqual(['first', 'second', 'second'])
})

test('the worker answers at the one address the app has, whatever follows its question mark', () => {
  const scope = 'https://host.example/reef/app/'
  const opens = (path: string) => isFrontDoor(new URL(path, scope), scope)
  expect(['./', './index.html', './?from=home', './#/food', './?a=1#/food'].filter((path) => !opens(path))).toEqual([])
  expect(['../', './food', './food/', './assets/index.html', 'https://else.example/reef/app/'].filter(opens)).toEqual(
    [],
  )
})
